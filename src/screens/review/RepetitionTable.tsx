import { useEffect, useRef } from 'react';
import { Cell, Column, Row, Table, TableBody, TableHeader } from 'react-aria-components';
import { shortAngle, shortDeviation } from '../../words/formatWithBand';
import { formatTime } from '../../words/formatTime';
import { formatTempo, tempo } from '../../words/tempo';
import { useMediaQuery } from '../../components/useMediaQuery';
import { VerdictLabel } from '../../components/VerdictLabel';
import type { MeasuredRepetition, Measurement } from '../../measurement/measurement';
import { findTask, type Task } from '../../protocol/tasks';
import type { Judgement } from '../../scoring/judge';
import { reasonWords } from '../../words/reasonWords';
import { completenessWords } from '../../words/completenessWords';

interface Props {
  measurement: Measurement;
  judgements: readonly Judgement[];
  selected: number | null;
  /** The repetition in which the video stands; null between repetitions. */
  now: number | null;
  onSelect: (index: number) => void;
}

/** All repetitions with their verdicts and numbers; the selected row moves with the arrow keys. */
export function RepetitionTable({ measurement, judgements, selected, now, onSelect }: Props) {
  const isNarrow = useMediaQuery('(width < 40rem), (56rem <= width < 80rem)');
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The rows come one drawing later than the table.
    const request = requestAnimationFrame(() => box.current !== null && showSelectedRow(box.current));
    return () => cancelAnimationFrame(request);
  }, [selected, measurement]);
  const { repetitions, setup, timesMs } = measurement;
  const { shape } = findTask(setup.task);
  const columns = [
    { name: '#', isNumber: true },
    { name: 'Time' },
    { name: 'Verdict', isRowHeader: true },
    { name: 'Score', isNumber: true },
    { name: isNarrow ? 'Peak' : 'Peak angle', isNumber: true },
    ...(isNarrow
      ? []
      : [
          { name: 'Knee off line', isNumber: true },
          { name: tempoHeads[shape], isNumber: true },
        ]),
  ];

  const cells = (repetition: MeasuredRepetition, judgement: Judgement) => {
    const { worst, alignmentScorePct } = judgement;
    const lacking = completenessWords[repetition.completeness];
    return [
      repetition.number,
      <>
        {formatTime(timesMs[repetition.loadedFrom]!)}
        {lacking !== null && <span className="table-lacking">{lacking.short}</span>}
      </>,
      <>
        <VerdictLabel judgement={judgement} side={setup.side} isShort={isNarrow} />
        {judgement.reason !== null && (
          <span className="table-lacking">{reasonWords[judgement.reason].short}</span>
        )}
      </>,
      alignmentScorePct === null ? '–' : `${Math.round(alignmentScorePct)} %`,
      worst === null ? '–' : shortAngle(worst),
      ...(isNarrow
        ? []
        : [
            repetition.kneeDeviation === null ? '–' : shortDeviation(repetition.kneeDeviation),
            formatTempo(tempo(repetition, shape)),
          ]),
    ];
  };

  return (
    <div ref={box} className="table-scroll">
      <Table
        className="table"
        aria-label="Repetitions"
        selectionMode="single"
        selectionBehavior="replace"
        selectedKeys={selected === null ? [] : [selected]}
        onSelectionChange={(keys) => {
          const [key] = keys === 'all' ? [] : [...keys];
          if (typeof key === 'number') onSelect(key);
        }}
      >
        <TableHeader>
          {columns.map(({ name, isNumber, isRowHeader }) => (
            <Column key={name} isRowHeader={isRowHeader ?? false} className={isNumber ? 'table-number' : ''}>
              {name}
            </Column>
          ))}
        </TableHeader>
        <TableBody renderEmptyState={() => <p className="soft table-empty">No repetition was found.</p>}>
          {repetitions.map((repetition, index) => {
            const judgement = judgements[index];
            if (judgement === undefined) return null;
            return (
              <Row
                key={repetition.number}
                id={index}
                className={index === now ? 'table-row table-row-now' : 'table-row'}
                textValue={`Repetition ${repetition.number}`}
                onPress={() => onSelect(index)}
              >
                {cells(repetition, judgement).map((content, column) => (
                  <Cell key={column} className={columns[column]?.isNumber ? 'table-number' : ''}>
                    {content}
                  </Cell>
                ))}
              </Row>
            );
          })}
        </TableBody>
      </Table>
    </div>
  );
}

const tempoHeads: Record<Task['shape'], string> = {
  rise: 'Rise / top / lowering',
  dip: 'Down / up',
  reach: 'Out / back',
};

/** Scrolls the table, and nothing around it, so far that the selected row can be seen below the head. */
function showSelectedRow(box: HTMLElement): void {
  const row = box.querySelector<HTMLElement>('[aria-selected="true"]');
  if (row === null) return;
  const headPx = box.querySelector('thead')?.clientHeight ?? 0;
  const lowest = row.offsetTop + row.offsetHeight - box.clientHeight;
  box.scrollTop = Math.min(Math.max(box.scrollTop, lowest), row.offsetTop - headPx);
}
