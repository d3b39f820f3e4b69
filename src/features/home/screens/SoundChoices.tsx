import { SwitchButton, SwitchField } from 'react-aria-components';
import { useHome, useHomeState } from '../homeContext';

/** Voice, tones, and the separate tone for a repetition outside the lane; captions are always shown. */
export function SoundChoices() {
  const home = useHome();
  const { voice, tones, outside, hasVoice } = useHomeState((state) => state.sound);
  return (
    <section className="home-section" aria-label="Sound">
      {!hasVoice && <p className="soft">This device has no voice. Everything is shown as text.</p>}
      {hasVoice && (
        <Toggle
          words="A voice tells you what to do"
          isOn={voice}
          onChange={(on) => home.setSound({ voice: on })}
        />
      )}
      <Toggle
        words="Tones for each repetition"
        isOn={tones}
        onChange={(on) => home.setSound({ tones: on })}
      />
      <Toggle
        words="A soft tone after a repetition outside the lane"
        isOn={outside}
        isDisabled={!tones}
        onChange={(on) => home.setSound({ outside: on })}
      />
    </section>
  );
}

interface ToggleProps {
  words: string;
  isOn: boolean;
  isDisabled?: boolean;
  onChange: (isOn: boolean) => void;
}

function Toggle({ words, isOn, isDisabled = false, onChange }: ToggleProps) {
  return (
    <SwitchField isSelected={isOn} isDisabled={isDisabled} onChange={onChange}>
      <SwitchButton className="toggle">
        <span className="toggle-track" aria-hidden="true" />
        {words}
      </SwitchButton>
    </SwitchField>
  );
}
