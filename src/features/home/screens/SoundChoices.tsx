import { SwitchButton, SwitchField } from 'react-aria-components';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

/** Voice, tones, and the separate tone for a repetition outside the lane; captions are always shown. */
export function SoundChoices() {
  const home = useHome();
  const { voice, tones, outside, hasVoice } = useHomeState((state) => state.sound);
  return (
    <section className="home-section" aria-label={message('sound.title')}>
      {!hasVoice && <p className="soft">{message('sound.no-voice')}</p>}
      {hasVoice && (
        <Toggle words={message('sound.voice')} isOn={voice} onChange={(on) => home.setSound({ voice: on })} />
      )}
      <Toggle words={message('sound.tones')} isOn={tones} onChange={(on) => home.setSound({ tones: on })} />
      <Toggle
        words={message('sound.outside')}
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
