import { cautionsOf } from '#documents/plan/cautions';
import { doseWords, itemFacts } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import type { PlanItem } from '#documents/plan/planDocument';
import type { PlanDraft } from '#documents/plan/planDraft';
import { planToFragment } from '#documents/plan/planLink';
import { videoWishSentence } from '#documents/plan/videoWishSentence';
import { HowTo } from '#ui/components/HowTo';
import { KeyWords } from '#ui/components/KeyWords';
import { KitList } from '#ui/components/KitList';
import { Parts } from '#ui/components/Parts';
import { QrCode } from '#ui/components/QrCode';
import { RedFlagList } from '#ui/components/RedFlagList';
import { StopRules } from '#ui/components/StopRules';
import { dateInWords } from '#words/dateWords';
import { cameraPlace } from '#words/exerciseWords';
import { message, messageParts } from '#words/messages/message';
import { usePlanWritingState } from '../planWritingContext';
import { Diary } from './Diary';
import { useSheetLanguage } from './useSheetLanguage';

/**
 * The sheet that the patient gets. On its first page: whom to ask, the code, when to stop, what to do, and a diary; how
 * each exercise is done comes after it. It is printed in the patient's language.
 */
export function PlanSheet() {
  const draft = usePlanWritingState((state) => state.draft);
  const language = useSheetLanguage(draft.language);
  return <Sheet key={language} draft={draft} />;
}

function Sheet({ draft }: { draft: PlanDraft }) {
  const { items, words, howOften, reviewDate, returnKeys } = draft;
  const perWeek = perWeekSentence(draft);
  const videoWish = videoWishSentence(draft);
  return (
    <article className="card plan-sheet" aria-label="The patient’s sheet">
      <Head patient={draft.patient} />
      {perWeek !== null && <p>{perWeek}</p>}
      {howOften !== '' && <p>{howOften}</p>}
      <Stops draft={draft} />
      {items.length === 0 ? (
        <p className="soft">No task yet.</p>
      ) : (
        <section>
          <h3>{message('sheet.overview')}</h3>
          <Overview items={items} />
        </section>
      )}
      {draft.freeItems.length > 0 && <Free items={draft.freeItems} />}
      {words !== '' && <blockquote className="plan-words">{words}</blockquote>}
      {reviewDate !== null && <p>{message('sheet.review', { day: dateInWords(reviewDate) })}</p>}
      {items.length > 0 && <Diary draft={draft} />}
      {items.length > 0 && <Details draft={draft} />}
      {videoWish !== null && <p>{videoWish}</p>}
      {returnKeys.length > 0 && (
        <p>
          <Parts
            of={messageParts('sheet.key', { count: returnKeys.length, words: <KeyWords of={returnKeys} /> })}
          />
        </p>
      )}
    </article>
  );
}

function Head({ patient }: { patient: string }) {
  const plan = usePlanWritingState((state) => state.plan);
  const practice = usePlanWritingState((state) => state.practice);
  const ask = [practice?.name, practice?.telephone].filter((one) => one !== undefined && one.trim() !== '');
  const link = plan === null ? null : `${location.origin}${location.pathname}#${planToFragment(plan)}`;
  return (
    <header className="plan-sheet-head">
      <div>
        <h2>{message('sheet.title', { patient: patient.trim() === '' ? '…' : patient })}</h2>
        {ask.length > 0 && <p>{message('sheet.practice', { practice: ask.join(', ') })}</p>}
        {link !== null && <p className="small plan-paper">{message('sheet.code')}</p>}
      </div>
      {link !== null && (
        <div className="plan-paper plan-sheet-code">
          <QrCode text={link} label="The plan as a code on paper" />
        </div>
      )}
    </header>
  );
}

function Stops({ draft }: { draft: PlanDraft }) {
  const { stop, beyondPainLimit, ifItGivesWay, defer } = cautionsOf(draft);
  return (
    <div className="plan-stops">
      <section>
        <h3>{message('sheet.stop')}</h3>
        <StopRules stop={stop} beyondPainLimit={beyondPainLimit} ifItGivesWay={ifItGivesWay} />
      </section>
      <section>
        <h3>{message('sheet.do-not')}</h3>
        <RedFlagList />
        <p>{defer}</p>
      </section>
    </div>
  );
}

/** Each exercise with how much of it and what to set up. */
function Overview({ items }: { items: readonly PlanItem[] }) {
  return (
    <ol className="plan-overview">
      {items.map((item, index) => (
        <li key={index}>
          <strong>{itemName(item)}</strong>: {doseWords(item)}.{' '}
          <span className="soft">{itemFacts(item).join(' ')}</span>
        </li>
      ))}
    </ol>
  );
}

function Free({ items }: { items: PlanDraft['freeItems'] }) {
  return (
    <section>
      <h3>{message('sheet.also')}</h3>
      <ul className="plan-overview">
        {items.map(({ name, dose, how }, index) => (
          <li key={index}>
            <strong>{name}</strong>
            {dose.trim() !== '' && `: ${dose}`}. {how}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What to have ready, where the camera goes, and how each exercise is done. */
function Details({ draft: { items, footwear } }: { draft: PlanDraft }) {
  const places = new Set(items.flatMap(({ task }) => cameraPlace(task) ?? []));
  return (
    <>
      <section className="plan-details">
        <h3>{message('sheet.ready')}</h3>
        <KitList items={items} footwear={footwear} />
      </section>
      {places.size > 0 && (
        <section>
          <h3>{message('sheet.camera')}</h3>
          {[...places].map((place) => (
            <p key={place}>{place}</p>
          ))}
        </section>
      )}
      <h3>{message('sheet.how')}</h3>
      <ol className="plan-items">
        {items.map((item, index) => (
          <li key={index}>
            <div>
              <h3>{itemName(item)}</h3>
              {item.sides.length === 0 ? (
                <p className="soft">How to do it appears once a side is chosen.</p>
              ) : (
                <HowTo item={item} />
              )}
            </div>
          </li>
        ))}
      </ol>
    </>
  );
}
