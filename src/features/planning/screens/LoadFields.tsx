import { ComboBox, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import { loadKinds, loadPlaces, type Load } from '#core/protocol/load';
import type { PlanItem } from '#documents/plan/planDocument';
import { longestLevel } from '#documents/schema/loadSchema';
import { Choice } from '#ui/components/Choice';
import { loadLevels } from '#words/loadWords';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem, field?: string) => void;
}

type Kind = (typeof loadKinds)[number];
const kindWords: Record<Kind, string> = { loop: 'Loop band', tube: 'Tube band', weight: 'Weight' };
const placeWords = { 'above-knees': 'Above the knees', ankle: 'At the ankle', hand: 'In the hand' } as const;
const firstPlace: Record<Kind, (typeof loadPlaces)[number]> = {
  loop: 'above-knees',
  tube: 'ankle',
  weight: 'hand',
};
const weights = ['1 kg', '2 kg', '3 kg', '4 kg', '5 kg', '6 kg', '8 kg', '10 kg'];

/** What makes an item heavier: what, how much of it, and where. */
export function LoadFields({ item, onChange }: Props) {
  const { load } = item;
  const put = (next: Load | null, field?: string) => onChange({ ...item, load: next }, field);
  const choose = (kind: Kind | 'none' | 'open') => {
    if (kind === 'open') return put(null);
    if (kind === 'none') return put({ kind });
    put({ kind, level: kind === 'weight' ? weights[1]! : loadLevels[0], where: firstPlace[kind] });
  };
  return (
    <>
      <Choice
        label="Load"
        options={[
          { id: 'open', name: 'Not said' },
          { id: 'none', name: 'None' },
          ...loadKinds.map((id) => ({ id, name: kindWords[id] })),
        ]}
        value={load?.kind ?? 'open'}
        onChange={choose}
      />
      {load !== null && load.kind !== 'none' && (
        <>
          <ComboBox
            className="field"
            allowsCustomValue
            menuTrigger="focus"
            inputValue={load.level}
            onInputChange={(level) =>
              level !== load.level && put({ ...load, level: level.slice(0, longestLevel) }, 'level')
            }
          >
            <Label className="field-label">{load.kind === 'weight' ? 'How heavy' : 'How strong'}</Label>
            <Input className="text-input" maxLength={longestLevel} />
            <Popover className="popover">
              <ListBox>
                {(load.kind === 'weight' ? weights : loadLevels).map((level) => (
                  <ListBoxItem key={level} id={level} className="option">
                    {level}
                  </ListBoxItem>
                ))}
              </ListBox>
            </Popover>
          </ComboBox>
          <Choice
            label="Where"
            options={loadPlaces.map((id) => ({ id, name: placeWords[id] }))}
            value={load.where}
            onChange={(where) => put({ ...load, where })}
          />
        </>
      )}
    </>
  );
}
