import { useEffect, useState } from 'react';
import type { PlanDocument } from '#documents/plan/planDocument';
import { locale, message } from '#words/messages/message';
import { useHomeState } from '../homeContext';
import { weekOf, type WeekDay } from '../rules/week';
import { weekWords } from './weekWords';
import './week.css';

/** On which days of this week the plan was followed, from Monday on, and how many times more. */
export function WeekDots({ plan: { perWeek } }: { plan: PlanDocument }) {
  const doneAt = useHomeState(({ today }) => today.doneAt);
  const week = weekOf(doneAt, perWeek, useNow());
  const words = weekWords(week);
  return (
    <section className="week" aria-label={message('today.week')}>
      {words ?? message('today.week')}
      <ol className="week-days">
        {week.days.map((day) => (
          <Dot key={day.date.getTime()} day={day} />
        ))}
      </ol>
    </section>
  );
}

function Dot({ day: { date, isDone, isToday } }: { day: WeekDay }) {
  return (
    <li
      className={`week-dot ${isDone ? 'week-dot-done' : ''} ${isToday ? 'week-dot-today' : ''}`}
      aria-current={isToday ? 'date' : undefined}
      aria-label={message('today.dot', {
        day: new Intl.DateTimeFormat(locale(), { weekday: 'long' }).format(date),
        today: isToday ? 'yes' : 'no',
        done: isDone ? 'yes' : 'no',
      })}
    >
      {isDone && '✓'}
    </li>
  );
}

/** The moment at which the page was last looked at: it may stay open overnight. */
function useNow(): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') setNow(new Date());
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  return now;
}
