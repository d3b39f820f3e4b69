import { GridList, GridListItem } from 'react-aria-components';
import { VerdictRow } from '#ui/components/VerdictRow';
import { conditionSentences } from '#words/conditionSentences';
import { dayWords, momentWords } from '#words/dateWords';
import { reasonWords } from '#words/reasonWords';
import { countRange } from '#words/setCountWords';
import { useKeptSessions, useKeptSessionsState } from '../keptSessionsContext';
import { changeSentence } from '../rules/changeWords';
import type { ListedRecording, ListedSession } from '../rules/listedSession';
import { changeSinceLast, type ChangeOfSet } from '../rules/peakChange';
import { doneInSet, nameOfSet, patientName, placeOfSet, scoreWords } from './sessionWords';

/** The sets of a session, one per row; the up and down keys move, Enter opens the recording in the review. */
export function SetList({ session }: { session: ListedSession }) {
  const keptSessions = useKeptSessions();
  const opening = useKeptSessionsState((state) => state.opening);
  const sessions = useKeptSessionsState((state) => state.sessions) ?? [];
  const open = (key: unknown) => {
    const set = session.sets[Number(key)];
    if (set === undefined || set.line.sessionId === null || set.reading.state !== 'read') return;
    const title = `${patientName(session.patient)}, ${momentWords(session.startedAt)}: ${nameOfSet(set)}, ${placeOfSet(set)}`;
    void keptSessions.openSet(set.line.sessionId, title);
  };
  return (
    <>
      <div className="set-row set-heads small" aria-hidden="true">
        <span>Exercise</span>
        <span>Done</span>
        <span>Repetitions, inward up</span>
        <span>In line</span>
        <span>Pain</span>
      </div>
      <GridList className="set-list" aria-label="Sets" onAction={open}>
        {session.sets.map((set, index) => {
          const isOpening = opening !== null && opening === set.line.sessionId;
          const change = changeSinceLast(sessions, session, set);
          return (
            <GridListItem
              key={index}
              id={index}
              className={`set-row set-${set.reading.state}`}
              textValue={`${nameOfSet(set)}, ${placeOfSet(set)}`}
            >
              <SetCells
                set={set}
                isUnfilmed={session.isUnfilmed}
                isOpening={isOpening}
                change={change && changeWords(change)}
              />
            </GridListItem>
          );
        })}
      </GridList>
    </>
  );
}

function changeWords(change: ChangeOfSet): string {
  if (change.kind === 'compared') return changeSentence(change.change, dayWords(change.change.earlierAt));
  return conditionSentences(change.comparison, ` with ${dayWords(change.earlierAt)}`).join(' ');
}

interface SetCellsProps {
  set: ListedRecording;
  isUnfilmed: boolean;
  isOpening: boolean;
  /** How it compares with the last such set, in a sentence; null where there is none. */
  change: string | null;
}

function SetCells({ set, isUnfilmed, isOpening, change }: SetCellsProps) {
  const { line, reading } = set;
  const { cutShort, painDuring } = line;
  return (
    <>
      <span className="set-name">
        <strong>{nameOfSet(set)}</strong>
        <span className="small soft">{placeOfSet(set)}</span>
      </span>
      <span className="number">{doneInSet(set)}</span>
      <span>
        <Marks reading={reading} isUnfilmed={isUnfilmed} />
      </span>
      <span className="number">
        <InLine reading={reading} />
      </span>
      <span className="number">
        <span className="set-label">Pain during: </span>
        {scoreWords(painDuring)}
      </span>
      <span className="set-open" aria-hidden="true">
        {reading.state === 'read' && (isOpening ? '…' : '›')}
      </span>
      {(cutShort !== null || change !== null || hasAside(reading)) && (
        <span className="set-aside small">
          {cutShort !== null && <span>Cut short: {cutShort}</span>}
          {change !== null && <span>{change}</span>}
          <Aside reading={reading} />
        </span>
      )}
    </>
  );
}

type Reading = ListedRecording['reading'];

function Marks({ reading, isUnfilmed }: { reading: Reading; isUnfilmed: boolean }) {
  switch (reading.state) {
    case 'none':
      return <span className="small soft">{isUnfilmed ? 'not filmed' : 'not recorded'}</span>;
    case 'reading':
      return <span className="small soft">reading …</span>;
    case 'unreadable':
      return <span className="small soft">can’t be read</span>;
    case 'read':
      return reading.result.marks.length === 0 ? (
        <span className="small soft">no complete repetition found</span>
      ) : (
        <VerdictRow marks={reading.result.marks} />
      );
  }
}

/** How many repetitions were in line; or that none was measured. */
function InLine({ reading }: { reading: Reading }) {
  if (reading.state !== 'read') return <span className="set-dash soft">–</span>;
  const { inLine } = reading.result;
  return (
    <>
      <span className="set-label">In line: </span>
      {inLine === null ? <span className="small soft">not measured</span> : countRange(inLine)}
    </>
  );
}

function countUnmeasured({ marks }: Extract<Reading, { state: 'read' }>['result']): number {
  return marks.filter(({ verdict }) => verdict === 'not-measured').length;
}

function hasAside(reading: Reading): boolean {
  if (reading.state === 'unreadable') return true;
  if (reading.state !== 'read') return false;
  const { isWaiting, hasVideo, result, isReviewed = false, isByHand = false } = reading;
  return isWaiting || !hasVideo || result.mainReason !== null || isReviewed || isByHand;
}

function Aside({ reading }: { reading: Reading }) {
  if (reading.state === 'unreadable') return <span>{reading.sentence}</span>;
  if (reading.state !== 'read') return null;
  const { result, isWaiting, hasVideo, isReviewed, isByHand } = reading;
  return (
    <>
      {result.mainReason !== null && (
        <span>
          {countUnmeasured(result)} not measured: {reasonWords(result.mainReason).short}
        </span>
      )}
      {isWaiting && <span>Not yet measured carefully from the video</span>}
      {!hasVideo && <span>No video was kept</span>}
      {isReviewed && <span>Reviewed</span>}
      {isByHand && <span>Corrected by hand</span>}
    </>
  );
}
