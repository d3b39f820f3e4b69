import {
  Button,
  Header,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  Popover,
  Select,
} from 'react-aria-components';
import { surenesses, type Sureness } from '#core/chance/grade';
import { useReview, useReviewState } from '../reviewContext';
import { surenessCosts } from '../rules/surenessCosts';

/** How sure it has to be before a side is named, with what each choice costs. */
export function SurenessChoice() {
  const review = useReview();
  const sureness = useReviewState((state) => state.sureness);
  return (
    <Select
      className="sureness no-print"
      value={String(sureness)}
      onChange={(key) => review.beSure(Number(key) as Sureness)}
    >
      <Label className="visually-hidden">How sure before I am told</Label>
      <Button className="select-button row-filter">
        {100 * sureness} % sure <span aria-hidden="true">▾</span>
      </Button>
      <Popover className="popover">
        <ListBox>
          <ListBoxSection>
            <Header className="option small">How sure before I am told</Header>
            {surenesses.map((one) => (
              <ListBoxItem key={one} id={String(one)} textValue={`${100 * one} %`} className="option">
                {100 * one} %<span className="soft">{costWords(one)}</span>
              </ListBoxItem>
            ))}
          </ListBoxSection>
        </ListBox>
      </Popover>
    </Select>
  );
}

function costWords(sureness: Sureness): string {
  const { decided, right } = surenessCosts[sureness];
  const [named, rightly] = [decided, right].map((share) => Math.round(100 * share)) as [number, number];
  return `A side was named for ${named} of 100 clear repetitions, rightly for ${rightly} of 100.`;
}
