import type { VideoPart } from '#documents/parcel/videoPart';
import { Choice, type Option } from '#ui/components/Choice';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

const wishes: Option<VideoPart | 'open'>[] = [
  { id: 'open', name: 'As the patient likes' },
  { id: 'none', name: 'No video' },
  { id: 'out-of-line', name: 'Only the repetitions out of line' },
  { id: 'without-head', name: 'The video without the head' },
  { id: 'whole', name: 'The whole video' },
];

/** How much of the video the therapist would like; asked only where sessions can come back. */
export function VideoWish() {
  const writing = usePlanWriting();
  const videoWish = usePlanWritingState(({ draft }) => draft.videoWish);
  const canSend = usePlanWritingState(({ draft }) => draft.returnKeys.length > 0);
  if (!canSend) return null;
  return (
    <Choice
      label="Video that you would like to be sent; the patient decides"
      options={wishes}
      value={videoWish ?? 'open'}
      onChange={(wish) => writing.change({ videoWish: wish === 'open' ? null : wish })}
    />
  );
}
