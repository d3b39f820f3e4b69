import { legLengthCm } from '#core/protocol/bodyHeight';

/**
 * A share of leg length in centimetres, to show next to it: '3 cm', or null where the body height is not known.
 *
 * @param value  share of leg length, either sign
 */
export function shortCm({ value }: { value: number }, bodyHeightCm: number | undefined): string | null {
  if (bodyHeightCm === undefined) return null;
  return `${Math.round(Math.abs(value) * legLengthCm(bodyHeightCm))} cm`;
}
