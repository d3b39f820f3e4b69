/**
 * The pose library names this class at its top for a runtime that is never asked for here.
 * The bundler puts this empty one in its place, so that nothing of that runtime is shipped.
 */
export class Pose {}
