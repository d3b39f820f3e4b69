import type { DeviceState } from '#shell/tracking/deviceState';
import { useTrackingState } from '#shell/tracking/trackingContext';

/** What the pose network runs on, as far as it is known. */
export function DeviceLine() {
  const device = useTrackingState((state) => state.device);
  return (
    <p className="small soft start-device">
      <strong>About this device:</strong> {describe(device)}
    </p>
  );
}

function describe(device: DeviceState): string {
  switch (device.state) {
    case 'unknown':
      return 'known as soon as the body finder has started.';
    case 'starting':
      return 'the body finder is starting …';
    case 'failed':
      return `the body finder could not start. ${device.sentence} It will be started again for the next video.`;
    case 'ready': {
      const { backend, threads } = device.device;
      if (backend !== 'wasm') return `the body finder runs on the graphics processor (${backend}).`;
      const workers = threads === 1 ? 'one thread' : `${threads} threads`;
      return `the body finder runs on the processor (wasm, ${workers}).`;
    }
  }
}
