import { Message } from '#ui/components/Message';
import { useHomeStep } from '../homeContext';

/** Says that the videos will not fit, while there is time to do something about it. */
export function RoomNotice() {
  const hasRoom = useHomeStep('camera', (part) => part.hasRoom);
  if (hasRoom) return null;
  return (
    <Message kind="caution">
      Today’s videos may not fit on this device. Your exercises still count and are measured. To keep the
      videos too, first delete old ones in ‘Kept sessions’.
    </Message>
  );
}
