import { videoType, type Videos } from './videos';

/** Videos in memory, lost with the tab, for a browser that keeps none. */
export function createMemoryVideos(): Videos {
  const videos = new Map<string, Blob>();
  return {
    create(name) {
      videos.set(name, new Blob());
      return Promise.resolve({
        write(chunk) {
          videos.set(name, new Blob([videos.get(name) ?? '', chunk]));
          return Promise.resolve();
        },
        close: () => Promise.resolve(),
      });
    },
    read(name) {
      const video = videos.get(name);
      return Promise.resolve(video === undefined ? null : new File([video], name, { type: videoType(name) }));
    },
    remove(name) {
      videos.delete(name);
      return Promise.resolve();
    },
    list: () => Promise.resolve([...videos].map(([name, { size: bytes }]) => ({ name, bytes }))),
  };
}
