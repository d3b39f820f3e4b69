import type { AppState } from '#features/review/store/appState';

type Facts = NonNullable<AppState['chosen']>;

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
