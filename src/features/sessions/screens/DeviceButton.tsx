import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { HeadDialog } from '#ui/components/HeadDialog';
import { NumberBox } from '#ui/components/NumberBox';
import { megabytes } from '#words/megabytes';
import { useKeptSessions, useKeptSessionsState } from '../keptSessionsContext';

/** Age from which a video counts as old, weeks. */
const usualWeeks = 8;
const weeksRange = { min: 1, max: 520 };

/** What this device keeps, and how it is freed or deleted. */
export function DeviceButton() {
  return (
    <HeadDialog name="Storage" title="Kept on this device">
      <Contents />
    </HeadDialog>
  );
}

function Contents() {
  const keptSessions = useKeptSessions();
  const space = useKeptSessionsState((state) => state.space);
  const isSafe = useKeptSessionsState((state) => state.isSafe);
  const freedBytes = useKeptSessionsState((state) => state.freedBytes);
  const [isSure, setSure] = useState(false);
  const freeableBytes = useKeptSessionsState((state) => state.freeableBytes);
  const [weeks, setWeeks] = useState(usualWeeks);
  const makesSense = weeks >= weeksRange.min && weeks <= weeksRange.max;
  useEffect(() => {
    if (makesSense) void keptSessions.lookAtSpace(weeks);
  }, [keptSessions, weeks, makesSense]);
  return (
    <>
      <p className="number" role="status">
        {space === null
          ? 'The browser does not report how much storage is used.'
          : `${megabytes(space.usedBytes)} used, ${megabytes(space.freeBytes)} free.`}
        {freedBytes !== null && ` ${megabytes(freedBytes)} of videos deleted.`}
      </p>
      {isSafe === false && (
        <p>
          The browser may clear all of this by itself when the device runs out of space. Save a backup now and
          then, and keep it somewhere else.
        </p>
      )}
      <p>
        Videos take up nearly all of it. You can delete old ones: their measurements stay, but can’t be
        repeated from the video.
      </p>
      <NumberBox
        label="Delete videos older than (weeks)"
        value={weeks}
        range={weeksRange}
        onChange={setWeeks}
      />
      <Button
        className="button"
        isDisabled={!makesSense || !freeableBytes}
        onPress={() => void keptSessions.freeVideos(weeks)}
      >
        {freeableBytes
          ? `Delete old videos, ${megabytes(freeableBytes)}`
          : `No videos older than ${weeks} weeks`}
      </Button>
      <p>
        Deleting everything removes sessions, videos, plans, drafts and keys. Without a backup of the key,
        sessions that patients send later can’t be opened.
      </p>
      {isSure ? (
        <Button className="button button-delete" onPress={() => void keptSessions.eraseAll()}>
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
