/** Height that pictures are scaled to: about twice the network's 256 px over a person who fills most of it. */
export const workingHeightPx = 640;
