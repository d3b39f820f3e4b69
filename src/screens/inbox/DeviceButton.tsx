import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { useInbox, useInboxState } from '../../app/inbox/InboxContext';
import { HeadDialog } from './HeadDialog';
import { megabytes } from '../../words/megabytes';

/** Results stay when videos of this age go, weeks. */
const oldWeeks = 8;

/** What this device keeps, and how it is freed or deleted. */
export function DeviceButton() {
  return (
    <HeadDialog name="Storage" title="Kept on this device">
      <Contents />
    </HeadDialog>
  );
}

function Contents() {
  const inbox = useInbox();
  const space = useInboxState((state) => state.space);
  const freedBytes = useInboxState((state) => state.freedBytes);
  const [isSure, setSure] = useState(false);
  useEffect(() => void inbox.lookAtSpace(), [inbox]);
  return (
    <>
      <p className="number" role="status">
        {space === null
          ? 'The browser does not tell how much is used.'
          : `${megabytes(space.usedBytes)} used, ${megabytes(space.freeBytes)} free.`}
        {freedBytes !== null && ` Videos of ${megabytes(freedBytes)} were deleted.`}
      </p>
      <p>
        Videos take nearly all of it. Those older than {oldWeeks} weeks can go; what was measured stays, and
        can’t be measured again from the video then.
      </p>
      <Button className="button" onPress={() => void inbox.freeVideos(oldWeeks)}>
        Delete videos older than {oldWeeks} weeks
      </Button>
      <p>
        Everything: sessions, videos, plans, drafts and keys. Without a backup of the key, what patients still
        send can’t be opened afterwards.
      </p>
      {isSure ? (
        <Button className="button button-delete" onPress={() => void inbox.eraseAll()}>
          Yes, delete everything for good
        </Button>
      ) : (
        <Button className="button" onPress={() => setSure(true)}>
          Delete everything …
        </Button>
      )}
    </>
  );
}
