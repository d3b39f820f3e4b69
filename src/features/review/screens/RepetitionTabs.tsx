import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReviewState } from '../reviewContext';
import { CorrectMenu } from './CorrectMenu';
import { CueList } from './CueList';
import { CyclePlot } from './CyclePlot';
import type { Playhead } from './playhead';
import { Remarks } from './Remarks';
import { RepetitionPanel } from './RepetitionPanel';
import { ShowOne } from './ShowOne';

interface Props {
  recording: ShownRecording;
  selected: number | null;
  playhead: Playhead;
  /** False where the video or a still elsewhere shows it. */
  showsStill: boolean;
  /** Whether joints are being corrected. */
  hasHandles: boolean;
  onSeek: (timeMs: number) => void;
  onSelect: (index: number) => void;
}

/** The selected repetition: its numbers, how it compares with the typical one, remarks, and cues for the patient. */
export function RepetitionTabs(props: Props) {
  const { recording, selected, playhead, showsStill, hasHandles, onSeek, onSelect } = props;
  const limits = useReviewState((state) => state.limits);
  const judgements = useReviewState((state) => state.judgements);
  const remarks = useReviewState((state) => state.entries.remarks.length);
  const cues = useReviewState((state) => state.entries.cues.length);
  const repetition = selected === null ? undefined : recording.measurement.repetitions[selected];
  const judgement = selected === null ? undefined : judgements[selected];
  if (selected === null || repetition === undefined || judgement === undefined) {
    return (
      <p className="soft review-empty">
        There is no repetition to show. Check the task and side above, or choose another video.
      </p>
    );
  }
  return (
    <Tabs className="review-tabs">
      <div className="review-tab-head">
        <TabList className="review-tab-list" aria-label="About the repetition">
          <Tab id="numbers" className="review-tab">
            This one
          </Tab>
          <Tab id="typical" className="review-tab">
            Against the set
          </Tab>
          <Tab id="remarks" className="review-tab">
            Remarks{remarks > 0 && ` (${remarks})`}
          </Tab>
          <Tab id="cues" className="review-tab">
            Cues{cues > 0 && ` (${cues})`}
          </Tab>
        </TabList>
        <ShowOne recording={recording} index={selected} />
      </div>
      <TabPanel id="numbers" className="review-tab-panel">
        <RepetitionPanel
          recording={recording}
          repetition={repetition}
          judgement={judgement}
          limits={limits}
          showsStill={showsStill}
          hasHandles={hasHandles}
          onSeek={onSeek}
        >
          <CorrectMenu recording={recording} index={selected} playhead={playhead} />
        </RepetitionPanel>
      </TabPanel>
      <TabPanel id="typical" className="review-tab-panel">
        <CyclePlot recording={recording} selected={selected} />
      </TabPanel>
      <TabPanel id="remarks" className="review-tab-panel">
        <Remarks recording={recording} selected={selected} />
      </TabPanel>
      <TabPanel id="cues" className="review-tab-panel">
        <CueList recording={recording} selected={selected} onSelect={onSelect} />
      </TabPanel>
    </Tabs>
  );
}
