import { trackVideo } from '../analysis/trackVideo';
import { openFrameSource } from '../frames/openFrameSource';
import { createPoseTracker } from '../pose/createPoseTracker';
Object.assign(window, {
  tryIt: async (model: 'full') => {
    const file = (document.getElementById('video') as HTMLInputElement).files![0]!;
    const source = await openFrameSource(file);
    const tracker = createPoseTracker(new URL('../', location.href).href);
    const device = await tracker.load(model);
    const t0 = performance.now();
    const track = await trackVideo(source, tracker, {});
    const s = (performance.now() - t0) / 1000;
    tracker.close();
    return {
      device,
      facts: source.facts,
      fps: track.timesMs.length / s,
      t: [...track.timesMs],
      x: [...track.xPx],
      y: [...track.yPx],
      s: [...track.score],
    };
  },
});
