import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { addedMeasures } from '#core/protocol/limits';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { Terms } from '#ui/components/Terms';
import { useReviewState } from '../reviewContext';
import type { Playhead } from './playhead';
import { repetitionAt } from './repetitionAt';
import { RepetitionTable } from './RepetitionTable';
import { RowFilters } from './RowFilters';
import { SurenessChoice } from './SurenessChoice';
import { terms } from './terms';
import { usePlayhead } from './usePlayhead';
import type { TableRows } from './useTableRows';
import { VerdictCounts } from './VerdictCounts';

interface Props {
  recording: ShownRecording;
  table: TableRows;
  playhead: Playhead;
  selected: number | null;
  onSelect: (index: number) => void;
}

/** The table of repetitions with its counts and filters. */
export function RepetitionsCard({ recording, table, playhead, selected, onSelect }: Props) {
  const { measurement, excluded } = recording;
  const judgements = useReviewState((state) => state.judgements);
  const added = useReviewState(
    useShallow(({ limits, measure }) => {
      const limited = addedMeasures(limits);
      return measure === 'knee-angle' || limited.includes(measure) ? limited : [...limited, measure];
    }),
  );
  const [hasAll, setAll] = useState(false);
  const now = usePlayhead(playhead, ({ timeMs }) => repetitionAt(measurement, timeMs));
  const { rows, order, sort, setSort, filter, setFilter } = table;
  return (
    <section className="card review-table" aria-label="Repetitions" tabIndex={-1}>
      <header className="review-table-head">
        <h2>Repetitions</h2>
        <VerdictCounts judgements={judgements} excluded={excluded} />
        <RowFilters filter={filter} onFilter={setFilter} hasAll={hasAll} onAll={setAll} />
        <SurenessChoice />
        <Terms label="Terms" terms={terms} />
      </header>
      <RepetitionTable
        measurement={measurement}
        rows={rows}
        order={order}
        sort={sort}
        added={added}
        hasAll={hasAll}
        selected={selected}
        now={now}
        onSelect={onSelect}
        onSort={setSort}
      />
    </section>
  );
}
