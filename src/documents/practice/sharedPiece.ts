import { z } from '../schema/zod';

/** Of each piece but the last, bytes: a cut line costs no more than that. */
export const pieceBytes = 1024 * 1024;
/** Four gigabytes: more than any set. */
const mostPieces = 4096;

/** A piece of a recording's video; its bytes are sealed beside it. */
export const sharedPieceSchema = z
  .strictObject({
    id: z.string().max(100),
    recordingId: z.uuid(),
    index: z.int().min(0),
    of: z.int().min(1).max(mostPieces).describe('How many pieces the video has.'),
    type: z.enum(['video/mp4', 'video/webm']),
    bytes: z.int().min(1).max(pieceBytes),
    sha256: z.string().regex(/^[0-9a-f]{64}$/),
    fromVideo: z
      .enum(['done', 'declined', 'impossible'])
      .describe('Whether the joints come from this video.'),
  })
  .refine(({ id, recordingId, index, of }) => index < of && id === pieceId(recordingId, index));
export type SharedPiece = z.infer<typeof sharedPieceSchema>;

export function pieceId(recordingId: string, index: number): string {
  return `${recordingId}:${index}`;
}

/** Of which recording an id names which piece. */
export function pieceOf(id: string): { recordingId: string; index: number } {
  const [recordingId = '', index = '0'] = id.split(':');
  return { recordingId, index: Number(index) };
}
