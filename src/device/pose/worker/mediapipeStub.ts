/**
 * The pose library imports this class for a runtime that is never used here. The bundler replaces it with
 * this empty one, so that nothing of that runtime is shipped.
 */
export class Pose {}
