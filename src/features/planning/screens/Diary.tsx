import { itemName } from '#documents/plan/itemName';
import type { PlanDraft } from '#documents/plan/planDraft';
import { message } from '#words/messages/message';

/** Days for which there is room. */
const days = Array.from({ length: 14 }, (_, i) => i + 1);

/** A table to tick with a pen: a column a day, a row for each exercise and for pain. */
export function Diary({ draft: { items, freeItems } }: { draft: PlanDraft }) {
  const rows = [
    ...items.map((item) => itemName(item)),
    ...freeItems.map(({ name }) => name),
    message('sheet.pain'),
    message('sheet.pain-next'),
  ];
  return (
    <section className="plan-diary plan-paper">
      <h3>{message('sheet.diary')}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{message('sheet.day')}</th>
            {days.map((day) => (
              <th key={day} scope="col">
                {day}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              <th scope="row">{row}</th>
              {days.map((day) => (
                <td key={day} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
