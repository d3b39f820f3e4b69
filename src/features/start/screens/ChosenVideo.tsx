import type { ReviewState } from '#features/review/store/reviewState';

type Facts = NonNullable<ReviewState['chosen']>;

/** The video that was chosen, in one line. */
export function ChosenVideo({ facts }: { facts: Facts }) {
  const { fileName, durationMs, widthPx, heightPx, frameRateHz } = facts;
  return (
    <p className="chosen-video">
      <strong>{fileName}</strong>
      <span className="small soft number">
        {(durationMs / 1000).toFixed(1)} seconds, {widthPx} × {heightPx}, {Math.round(frameRateHz)} frames per
        second
      </span>
    </p>
  );
}
