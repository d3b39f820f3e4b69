import { memo } from 'react';
import {
  Button,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  ToggleButton,
} from 'react-aria-components';
import type { RowFilter } from '../rules/repetitionRow';

const filters: { id: RowFilter; name: string }[] = [
  { id: 'all', name: 'All' },
  { id: 'out', name: 'Out of line' },
  { id: 'cant-tell', name: 'Can’t tell' },
  { id: 'in', name: 'In line' },
  { id: 'not-measured', name: 'Not measured' },
  { id: 'inward', name: 'Inward' },
  { id: 'outward', name: 'Outward' },
  { id: 'excluded', name: 'Excluded' },
];

interface Props {
  filter: RowFilter;
  onFilter: (filter: RowFilter) => void;
  hasAll: boolean;
  onAll: (hasAll: boolean) => void;
}

/** Which repetitions the table shows, and how much of each. */
export const RowFilters = memo(function RowFilters({ filter, onFilter, hasAll, onAll }: Props) {
  return (
    <div className="row-filters no-print">
      <Select aria-label="Show" selectedKey={filter} onSelectionChange={(key) => onFilter(key as RowFilter)}>
        <Button className="select-button row-filter">
          <SelectValue /> <span aria-hidden="true">▾</span>
        </Button>
        <Popover className="popover">
          <ListBox>
            {filters.map(({ id, name }) => (
              <ListBoxItem key={id} id={id} className="option">
                {name}
              </ListBoxItem>
            ))}
          </ListBox>
        </Popover>
      </Select>
      <ToggleButton className="button button-quiet" isSelected={hasAll} onChange={onAll}>
        {hasAll ? 'Fewer measures' : 'All measures'}
      </ToggleButton>
    </div>
  );
});
