import { FileDrop } from '#ui/components/FileDrop';
import { useReview } from '../reviewContext';

/** Says that a recording came without its video, and takes the video. */
export function AttachVideo() {
  const review = useReview();
  return (
    <div className="stage-attach">
      <FileDrop buttonText="Attach the video" onFiles={([file]) => void (file && review.attachVideo(file))}>
        <p>
          <strong>The video is not attached.</strong> A recording stores the joints, not the pictures;
          measuring needs only the joints.
        </p>
      </FileDrop>
    </div>
  );
}
