import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHomeStep } from '../homeContext';

/** Says that the videos will not fit, while there is time to do something about it. */
export function RoomNotice() {
  const hasRoom = useHomeStep('camera', (part) => part.hasRoom);
  if (hasRoom) return null;
  return <Message kind="caution">{message('camera.room')}</Message>;
}
