/**
 * The built-in example: what was seen in it, and its video.
 *
 * @param folderUrl  URL of its folder, with a slash at its end
 * @throws Error  where a part is missing from the installation
 */
export async function fetchExample(folderUrl: string): Promise<{ recordingText: string; video: File }> {
  const [recordingText, video] = await Promise.all([
    fetchExampleRecording(folderUrl),
    fetchPart(`${folderUrl}example.mp4`, 'video'),
  ]);
  return {
    recordingText,
    video: new File([await video.blob()], 'example.mp4', { type: 'video/mp4' }),
  };
}

/**
 * What was seen in the example alone, as the text of its document.
 *
 * @throws Error  where it is missing from the installation
 */
export async function fetchExampleRecording(folderUrl: string): Promise<string> {
  return (await fetchPart(`${folderUrl}example.session.json`, 'json')).text();
}

/**
 * The built-in example of a plan, as text.
 *
 * @throws Error  where it is missing from the installation
 */
export async function fetchExamplePlan(folderUrl: string): Promise<string> {
  return (await fetchPart(`${folderUrl}example.plan.json`, 'json')).text();
}

async function fetchPart(url: string, kind: 'json' | 'video'): Promise<Response> {
  const response = await fetch(url);
  // A server may answer a missing file with the start page.
  const isPage = response.headers.get('content-type')?.startsWith('text/html') ?? false;
  if (response.ok && !isPage) return response;
  throw new Error(`the example’s ${kind} file is missing from this installation`);
}
