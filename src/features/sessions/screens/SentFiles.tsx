import { Button, FileTrigger } from 'react-aria-components';
import { useReview } from '#features/review/reviewContext';
import { useClinic, useClinicState } from '#features/sharing/clinicContext';
import type { Incoming } from '#features/sharing/store/createClinic';
import { sortFiles } from '#features/sharing/store/sessionFile';
import { useNavigation } from '#shell/navigation/navigationContext';
import { useFileDrop } from '#ui/components/useFileDrop';
import { momentWords } from '#words/dateWords';
import { patientName } from './sessionWords';
import { stakeWords } from './stakeWords';

const stateWords: Record<Incoming['state'], string> = {
  checking: 'being checked …',
  kept: 'kept',
  known: 'already kept; nothing was changed',
  asks: 'a different version of a session already kept here',
  doubtful: 'not kept yet',
  left: 'skipped; nothing was changed',
  refused: 'refused',
};

interface Props {
  /** The way to a patient's page; null where there is none yet. */
  wayTo?: (pseudonym: string) => (() => void) | null;
}

/** Opens what patients sent, and shows the outcome for each file. */
export function SentFiles({ wayTo = () => null }: Props) {
  const clinic = useClinic();
  const incoming = useClinicState((state) => state.incoming);
  const review = useReview();
  const navigation = useNavigation();
  /** Clips, and recordings without a session, are opened to be looked at, and kept for a patient from there. */
  const take = async (files: readonly File[]) => {
    const { sessions, recordings, videos } = await sortFiles(files);
    if (sessions.length > 0) await clinic.openFiles(sessions, recordings);
    const others = sessions.length > 0 ? videos : [...recordings, ...videos];
    if (others.length > 0 && (await navigation.show('start'))) await review.openFiles(others);
  };
  const isOver = useFileDrop((_, files) => void take(files));
  return (
    <section className="sessions-sent" aria-label="Sent sessions" data-drop-target={isOver || undefined}>
      <FileTrigger
        allowsMultiple
        acceptedFileTypes={['.age', '.json', 'video/*']}
        onSelect={(files) => void take([...(files ?? [])])}
      >
        <Button className="button">Open sent sessions</Button>
      </FileTrigger>
      <span className="soft small sessions-sent-hint">
        or drop them anywhere on this page; session documents with their recordings, and clips too
      </span>
      {incoming.length > 0 && (
        <div className="card sessions-sent-list">
          <ul aria-label="Received files" role="log">
            {incoming.map((one, index) => (
              <li key={index}>
                <strong>
                  {one.session === null
                    ? one.fileName
                    : `${patientName(one.session.patient)}, ${momentWords(one.session.startedAt)}`}
                </strong>
                : {stateWords[one.state]}
                {one.recordings > 0 &&
                  ` (with ${one.recordings} ${one.recordings === 1 ? 'recording' : 'recordings'} that came along)`}
                {one.sentence !== null && `. ${one.sentence}`}
                {one.stake !== null && `. ${stakeWords(one.stake)}`}
                {one.state !== 'doubtful' && one.sender !== null && (
                  <span className="small soft sessions-sent-by">{one.sender}</span>
                )}
                {(one.state === 'kept' || one.state === 'known') && one.session !== null && (
                  <ToPatient patient={one.session.patient} onPress={wayTo(one.session.patient)} />
                )}
                {one.state === 'doubtful' && (
                  <span className="button-row">
                    <Button className="button" onPress={() => void clinic.decide(index, true)}>
                      Keep it all the same
                    </Button>
                    <Button className="button button-quiet" onPress={() => void clinic.decide(index, false)}>
                      Skip it
                    </Button>
                  </span>
                )}
                {one.state === 'asks' && (
                  <span className="button-row">
                    <Button className="button" onPress={() => void clinic.decide(index, true)}>
                      Take the new version
                    </Button>
                    <Button className="button button-quiet" onPress={() => void clinic.decide(index, false)}>
                      Keep the existing one
                    </Button>
                  </span>
                )}
              </li>
            ))}
          </ul>
          <Button className="button button-quiet" onPress={() => clinic.clearList()}>
            Clear this list
          </Button>
        </div>
      )}
    </section>
  );
}

function ToPatient({ patient, onPress }: { patient: string; onPress: (() => void) | null }) {
  if (onPress === null) return null;
  return (
    <Button className="button button-quiet" onPress={onPress}>
      Show {patient}
    </Button>
  );
}
