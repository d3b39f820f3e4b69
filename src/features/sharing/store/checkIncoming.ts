import { Problem } from '#core/problem';
import type { Repository } from '#device/storage/repository';
import { dateFault } from '#documents/parcel/dateFault';
import type { PlanDocument } from '#documents/plan/planDocument';
import { mixesAlphabets, plainName } from '#documents/schema/plainName';
import { sentName, tombstoneName } from '#shell/receivedNotes';
import { keyWords } from '#words/keyWords';
import { pinSender, readSenders } from './knownSenders';
import type { Parcel } from './parcel';

/** What is known of a sent session before it is kept. */
export interface IncomingCheck {
  /** Which device it comes from; a sentence. */
  sender: string;
  /** Reasons to ask before it is kept, a sentence each; none where it is what was to be expected. */
  doubts: string[];
  /** To be called once it is kept. */
  accept(): Promise<void>;
}

/**
 * Compares a sent session with what is known here: the plan, the device that sent it, what was deleted.
 *
 * @param parcel  with its signature checked
 * @param plan  the one that it follows, as it is kept here; null where there is none
 * @throws Problem  where its dates can't be
 */
export async function checkIncoming(
  parcel: Parcel,
  plan: PlanDocument | null,
  repository: Repository,
  nowMs: number,
): Promise<IncomingCheck> {
  const { session, sets, sentAt, sender } = parcel;
  const times = [...sets.map(({ recording }) => recording.createdAt), ...(sentAt === null ? [] : [sentAt])];
  const fault = dateFault(session, times, nowMs);
  if (fault !== null) throw new Problem('file', fault);

  const { planId } = session;
  const tombstone = tombstoneName(session.id);
  const notes = await repository.notes.read();
  const deletedOn = notes.get(tombstone) ?? null;
  const lastSentAt = notes.get(sentName(session.id)) ?? null;
  const senders = planId === null ? [] : await readSenders(repository, planId);
  const device = deviceOf(sender?.key ?? null, senders);
  const doubts = [
    planDoubt(session.patient, plan, sets.length > 0),
    mixesAlphabets(session.patient)
      ? 'The pseudonym has letters of different alphabets, so it may only look like one that you know.'
      : null,
    deletedOn === null ? null : `You deleted this session here on ${deletedOn}.`,
    sentAt !== null && lastSentAt !== null && Date.parse(sentAt) < Date.parse(lastSentAt)
      ? 'It was sent before the one that is kept here.'
      : null,
    device.doubt,
  ];
  return {
    sender: device.sentence,
    doubts: doubts.filter((doubt) => doubt !== null),
    async accept() {
      if (deletedOn !== null) await repository.notes.remove(tombstone);
      if (sentAt !== null) await repository.notes.write(sentName(session.id), sentAt);
      if (planId !== null && sender !== null) await pinSender(repository, planId, sender.key);
    },
  };
}

function planDoubt(patient: string, plan: PlanDocument | null, isMeasured: boolean): string | null {
  if (plan === null)
    return `It follows no plan that was written on this device${isMeasured ? ', so it is judged by the limits that came with it' : ''}.`;
  const planned = plainName(plan.patient);
  return planned === patient ? null : `It follows the plan of ${planned}, under another pseudonym.`;
}

function deviceOf(
  key: string | null,
  senders: readonly string[],
): { sentence: string; doubt: string | null } {
  if (key === null) {
    const sentence = 'It is not signed, so nothing shows which device it comes from.';
    return { sentence, doubt: senders.length > 0 ? `${sentence} Earlier ones were signed.` : null };
  }
  const code = `The device’s words are “${keyWords(key)}”.`;
  if (senders.includes(key)) return { sentence: 'It comes from the same device as before.', doubt: null };
  if (senders.length === 0)
    return {
      sentence: `It is the first one from this patient’s device. ${code} The patient sees the same words where sessions are sent.`,
      doubt: null,
    };
  return {
    sentence: `It comes from another device than before. ${code}`,
    doubt: `It comes from another device than before. ${code} Ask the patient whether they see the same words.`,
  };
}
