import { useState, type FormEvent } from 'react';
import { Button, Dialog, Heading, Input, Label, Text, TextField } from 'react-aria-components';
import { spreadOverWeek, weekdays, type Weekday } from '#documents/calendar/spreadOverWeek';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { DialogBox } from '#ui/components/DialogBox';
import { capitalised } from '#words/capitalised';
import { locale, message } from '#words/messages/message';
import { useHome } from '../homeContext';
import { Stepper } from './Stepper';

const firstTime = '18:00';
/** Where the plan leaves it open; can be changed. */
const firstPerWeek = 3;

/** Asks at what time of day, and saves the days of the week as a calendar file. */
export function CalendarButton({ plan }: { plan: PlanDocument }) {
  const [isAsking, setAsking] = useState(false);
  return (
    <>
      <Button className="button" onPress={() => setAsking(true)}>
        {message('calendar.button')}
      </Button>
      <DialogBox isOpen={isAsking} onOpenChange={setAsking} isDismissable>
        <Dialog className="dialog">
          <Heading slot="title">{message('calendar.title')}</Heading>
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
        <Label className="field-label">{message('calendar.time')}</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          {daysWords(perWeek)} {message('calendar.shows')}
        </Text>
      </TextField>
      {plan.perWeek === null && (
        <Stepper
          label={message('calendar.per-week')}
          value={perWeek}
          range={planRanges.perWeek}
          onChange={setPerWeek}
        />
      )}
      <p className="small soft">{message('calendar.file')}</p>
      <div className="dialog-answers">
        <Button className="button" onPress={onDone}>
          {message('home.cancel')}
        </Button>
        <Button type="submit" className="button button-primary" isDisabled={time === ''}>
          {message('calendar.save')}
        </Button>
      </div>
    </form>
  );
}

/** On which days: 'Monday, Wednesday and Friday.' */
function daysWords(perWeek: number): string {
  const { once, again } = spreadOverWeek(perWeek);
  if (once.length === 7) {
    if (again.length === 0) return message('calendar.every-day');
    if (again.length === 7) return message('calendar.every-day-twice');
    return message('calendar.every-day-again', { again: listed(again) });
  }
  const days = capitalised(listed(once));
  return again.length === 0
    ? message('calendar.days', { days })
    : message('calendar.days-again', { days, again: listed(again) });
}

/** A Monday: the names of the days are counted from it. */
const mondayMs = Date.UTC(2024, 0, 1);
const dayMs = 24 * 60 * 60 * 1000;

function listed(days: readonly Weekday[]): string {
  const name = new Intl.DateTimeFormat(locale(), { weekday: 'long', timeZone: 'UTC' });
  const names = days.map((day) => name.format(mondayMs + weekdays.indexOf(day) * dayMs));
  return new Intl.ListFormat(locale(), { type: 'conjunction' }).format(names);
}
