import { useState, type FormEvent } from 'react';
import { Button, Dialog, Heading, Input, Label, Text, TextField } from 'react-aria-components';
import { spreadOverWeek, weekdays, type Weekday } from '#documents/calendar/spreadOverWeek';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { DialogBox } from '#ui/components/DialogBox';
import { useHome } from '../homeContext';
import { Stepper } from './Stepper';

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const firstTime = '18:00';
/** Where the plan leaves it open; can be changed. */
const firstPerWeek = 3;

/** Asks at what time of day, and saves the days of the week as a calendar file. */
export function CalendarButton({ plan }: { plan: PlanDocument }) {
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <Button className="button" onPress={() => setAsking(true)}>
        Put it in my calendar
      </Button>
      <DialogBox isOpen={isAsking} onOpenChange={setAsking} isDismissable>
        <Dialog className="dialog">
          <Heading slot="title">When do you want to be reminded?</Heading>
          <Times plan={plan} onDone={() => setAsking(false)} />
        </Dialog>
      </DialogBox>
    </>
  );
}

function Times({ plan, onDone }: { plan: PlanDocument; onDone: () => void }) {
  const home = useHome();
  const [time, setTime] = useState(firstTime);
  const [perWeek, setPerWeek] = useState(plan.perWeek ?? firstPerWeek);
  const [hour, minute] = time.split(':').map(Number);
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (hour === undefined || minute === undefined) return;
    home.saveReminders(plan.id, perWeek, { hour, minute });
    onDone();
  };
  return (
    <form className="dialog-form" onSubmit={save}>
      <TextField className="field" type="time" value={time} onChange={setTime} isRequired>
        <Label className="field-label">Time of day</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          {daysWords(perWeek)} Your calendar shows it as ‘Exercises’, and nothing else.
        </Text>
      </TextField>
      {plan.perWeek === null && (
        <Stepper label="Times a week" value={perWeek} range={planRanges.perWeek} onChange={setPerWeek} />
      )}
      <p className="small soft">Open the file that is saved, and your calendar takes the days from it.</p>
      <div className="dialog-answers">
        <Button className="button" onPress={onDone}>
          Cancel
        </Button>
        <Button type="submit" className="button button-primary" isDisabled={time === ''}>
          Save for my calendar
        </Button>
      </div>
    </form>
  );
}

/** On which days: 'Monday, Wednesday and Friday.' */
function daysWords(perWeek: number): string {
  const { once, again } = spreadOverWeek(perWeek);
  const first = once.length === 7 ? 'Every day' : listed(once);
  if (again.length === 0) return `${first}.`;
  return again.length === 7 ? `${first}, twice.` : `${first}, and twice on ${listed(again)}.`;
}

function listed(days: readonly Weekday[]): string {
  const names = days.map((day) => dayNames[weekdays.indexOf(day)]!);
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
