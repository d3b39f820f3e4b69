import type { Sureness } from '#core/chance/grade';
import type { OpenFrameSource } from '#device/frames/frameSource';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Tracking } from '#shell/tracking/createTracking';
import type { KeptReview } from './keptReview';

/** What the review needs from its environment; tests pass plain objects. */
export interface ReviewAdapters {
  openFrameSource: OpenFrameSource;
  navigation: Pick<Navigation, 'store' | 'screen' | 'show' | 'ask'>;
  tracking: Pick<Tracking, 'trackFile' | 'lookCloser'>;
  /** The built-in example: its recording document as text, and its video. */
  fetchExample: () => Promise<{ recordingText: string; video: File }>;
  /** Hands a text file to the user. */
  saveFile: (fileName: string, text: string) => void;
  /** Who reviews on this device, remembered when the page is closed. */
  reviewer: { read: () => string; write: (name: string) => void };
  /** How sure it has to be before a side is named, remembered likewise. */
  sureness: { read: () => Sureness; write: (sureness: Sureness) => void };
  /** Keeping recordings under patients on this device. */
  patients: {
    pseudonyms: () => Promise<string[]>;
    /** Keeps it with its video; rejects with an error whose message can be shown. */
    keep: (recording: RecordingDocument, video: File | null, pseudonym: string) => Promise<KeptReview>;
  };
  newId: () => string;
  now: () => Date;
  /** Calls once the page has drawn. */
  later: (call: () => void) => void;
}
