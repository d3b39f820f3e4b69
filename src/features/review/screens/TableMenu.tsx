import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { useReview } from '../reviewContext';

/** The recording's numbers as tables for a spreadsheet or a statistics program. */
export function TableMenu() {
  const review = useReview();
  return (
    <MenuTrigger>
      <Button className="button">
        Save as CSV <span aria-hidden="true">▾</span>
      </Button>
      <Popover className="popover">
        <Menu aria-label="Save as CSV">
          <MenuItem
            className="option"
            textValue="One row per repetition"
            onAction={() => review.saveTable('repetitions')}
          >
            One row per repetition
            <span className="soft">Verdicts, angles with their bands, times</span>
          </MenuItem>
          <MenuItem
            className="option"
            textValue="One row per frame"
            onAction={() => review.saveTable('frames')}
          >
            One row per frame
            <span className="soft">Knee angle and every body point as it was seen</span>
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
