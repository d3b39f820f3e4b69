/** Why a set ended before its time without anybody wanting it, as its session says. */
export const unwanted = {
  interrupted: 'The recording was interrupted: the page was closed, or the device went off.',
  cameraStopped: 'the camera stopped',
  pictureTurned: 'the picture was turned',
};
