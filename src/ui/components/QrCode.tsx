import { encode } from 'uqr';

/** Light squares that a reader needs around a code (ISO/IEC 18004: four). */
const margin = 4;

/** A text as a QR code, black on white whatever the page's colours; null where the text is too long for a code. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const rows = squaresOf(text);
  if (rows === null) return null;
  const size = rows.length + 2 * margin;
  const path = rows.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? `M${x + margin} ${y + margin}h1v1h-1z` : [])),
  );
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={path.join('')} fill="#000" />
    </svg>
  );
}

function squaresOf(text: string): boolean[][] | null {
  try {
    return encode(text, { ecc: 'L', border: 0 }).data;
  } catch {
    return null;
  }
}
