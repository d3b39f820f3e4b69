import { useState } from 'react';
import { Choice } from '#ui/components/Choice';
import { message } from '#words/messages/message';
import { useHomeState } from '../homeContext';
import type { CameraChoiceWish } from '../store/homeApp';

/** Front or back until access is granted, then each camera by name. */
export function CameraPicker({ onChoose }: { onChoose: (wish: CameraChoiceWish) => void }) {
  const camera = useHomeState((state) => state.camera);
  const cameras = useHomeState((state) => state.cameras);
  const [facing, setFacing] = useState<'front' | 'back'>('front');
  const [wished, setWished] = useState<string | null>(null);
  if (camera.state === 'on' || cameras.length > 1) {
    const options = cameras.map(({ deviceId, label }) => ({ id: deviceId, name: label }));
    if (options.length < 2) return null;
    const chosen = camera.state === 'on' ? camera.camera.deviceId : (wished ?? options[0]!.id);
    return (
      <Choice
        label={message('camera.camera')}
        options={options}
        value={chosen}
        onChange={(deviceId) => {
          setWished(deviceId);
          onChoose({ deviceId });
        }}
      />
    );
  }
  return (
    <Choice
      label={message('camera.camera')}
      options={facings()}
      value={facing}
      onChange={(next) => {
        setFacing(next);
        onChoose({ facing: next });
      }}
    />
  );
}

const facings = () =>
  (['front', 'back'] as const).map((id) => ({
    id,
    name: message(`camera.${id}`),
    hint: message(`camera.${id}.hint`),
  }));
