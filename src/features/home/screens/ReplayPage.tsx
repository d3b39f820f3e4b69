import { useEffect, useMemo } from 'react';
import { Button, Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { createPlayhead } from '#features/review/screens/playhead';
import { usePlayhead } from '#features/review/screens/usePlayhead';
import { VideoStage } from '#features/review/screens/VideoStage';
import { useMediaQuery } from '#ui/components/useMediaQuery';
import { message } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import type { Replay } from '../store/homeState';
import { HomePage } from './HomePage';
import './replay.css';
import { replaySentence, replayTitle } from './replayWords';
import { setName } from './setWords';

/** A movement can be followed at half the speed at which it was filmed. */
const slowly = 0.5;

/** The best repetition and the one nearest to the edge, over and over in slow motion. */
export function ReplayPage() {
  const home = useHome();
  const shown = useHomeStep('summary', (part) => part.shown);
  const back = () => home.back();
  return (
    <HomePage
      title={message('replay.title')}
      back={back}
      actions={
        <Button className="button button-primary" onPress={back}>
          {message('replay.back')}
        </Button>
      }
    >
      <Tabs className="replay">
        <TabList className="replay-tabs" aria-label={message('replay.repetitions')}>
          {shown.map((replay) => (
            <Tab key={replay.kind} id={replay.kind} className="replay-tab">
              {replayTitle(replay)}
            </Tab>
          ))}
        </TabList>
        {shown.map((replay) => (
          <TabPanel key={replay.kind} id={replay.kind} className="replay-panel">
            <Player replay={replay} />
          </TabPanel>
        ))}
      </Tabs>
    </HomePage>
  );
}

function Player({ replay }: { replay: Replay }) {
  const { recording, limits, fromMs, toMs, stillMs } = replay;
  const isStill = useMediaQuery('(prefers-reduced-motion: reduce)');
  const name = useHomeState(({ sets }) => {
    const recorded = sets.filter(({ recordingId }) => recordingId !== null);
    const set = recorded.find(({ recordingId }) => recordingId === replay.recordingId);
    return recorded.length < 2 || set === undefined ? null : setName(set);
  });
  const playhead = useMemo(() => createPlayhead(recording.track.timesMs), [recording]);
  const isPlaying = usePlayhead(playhead, (state) => state.isPlaying);
  useEffect(() => {
    playhead.setRate(slowly);
    playhead.setLoop({ fromMs, toMs });
    playhead.seek(isStill ? stillMs : fromMs);
    if (!isStill) playhead.togglePlaying();
  }, [playhead, isStill, fromMs, toMs, stillMs]);
  return (
    <>
      <VideoStage recording={recording} limits={limits} playhead={playhead} isNear canAttach={false} />
      <div className="replay-words">
        {name !== null && <p className="small soft">{name}</p>}
        <p className="replay-sentence">{replaySentence(replay)}</p>
        <p className="small soft">{message('replay.lane')}</p>
        <Button className="button" onPress={playhead.togglePlaying}>
          {message(isPlaying ? 'replay.pause' : 'replay.play')}
        </Button>
      </div>
    </>
  );
}
