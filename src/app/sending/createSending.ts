import { createStore, type StoreApi } from 'zustand/vanilla';
import type { OpenedRepository } from '../../storage/openRepository';
import { storageProblem } from '../../storage/storageProblem';
import { explainProblem } from '../explainProblem';
import { packParcel, type Parcel } from './parcel';
import { sealFor } from './seal';

export interface SendingState {
  /** 'shared' by the device's own way of sharing; 'saved' as a file that is still to be sent. */
  state: 'idle' | 'sealing' | 'shared' | 'saved' | 'failed';
  /** What would be sent, bytes; null until it was looked at. */
  sizes: { withoutVideo: number; withVideo: number } | null;
  sentence: string | null;
}

/** What sending needs from the world around it; tests hand in plain objects. */
export interface SendingWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** Hands a file to the device's way of sharing; false where it has none for files, or it was called off. */
  share(file: File): Promise<boolean>;
  saveBlob(fileName: string, blob: Blob): void;
  now(): Date;
}

/** Sending a visit to the therapist. No action rejects: what goes wrong stands in the state. */
export interface Sending {
  readonly store: StoreApi<SendingState>;
  /** Looks how much a visit comes to, with its videos and without. */
  look(visitId: string): Promise<void>;
  /** @param recipient  the therapist's public key, from the plan */
  send(visitId: string, recipient: string, withVideo: boolean): Promise<void>;
}

export function createSending(world: SendingWorld): Sending {
  const idle: SendingState = { state: 'idle', sizes: null, sentence: null };
  const store = createStore<SendingState>(() => idle);

  const read = async (visitId: string, withVideo: boolean): Promise<Parcel> => {
    const { visits, sessions, videos } = (await world.openRepository()).repository;
    const visit = await visits.find(visitId);
    if (visit === null) throw storageProblem('missing');
    const sets: Parcel['sets'] = [];
    for (const { sessionId } of visit.sets) {
      const kept = sessionId === null ? null : await sessions.find(sessionId);
      if (kept === null) continue;
      const name = kept.facts.video;
      sets.push({
        session: kept.session,
        video: withVideo && name !== null ? await videos.read(name) : null,
      });
    }
    return { visit, sets };
  };

  return {
    store,
    async look(visitId) {
      store.setState(idle);
      try {
        const { visit, sets } = await read(visitId, true);
        const withoutVideo = (
          await packParcel({ visit, sets: sets.map(({ session }) => ({ session, video: null })) })
        ).size;
        const videoBytes = sets.reduce((sum, { video }) => sum + (video?.size ?? 0), 0);
        store.setState({ sizes: { withoutVideo, withVideo: withoutVideo + videoBytes } });
      } catch (error) {
        store.setState({ state: 'failed', sentence: explainProblem(error, 'be read').sentence });
      }
    },
    async send(visitId, recipient, withVideo) {
      store.setState({ state: 'sealing', sentence: null });
      try {
        const sealed = await sealFor(recipient, await packParcel(await read(visitId, withVideo)));
        const fileName = `overfoot-session-${world.now().toISOString().slice(0, 10)}.age`;
        const isShared = await world.share(
          new File([sealed], fileName, { type: 'application/octet-stream' }),
        );
        if (!isShared) world.saveBlob(fileName, sealed);
        store.setState({ state: isShared ? 'shared' : 'saved' });
      } catch (error) {
        store.setState({ state: 'failed', sentence: explainProblem(error, 'be sealed').sentence });
      }
    },
  };
}
