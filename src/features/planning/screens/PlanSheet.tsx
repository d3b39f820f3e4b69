import { cautionsOf } from '#documents/plan/cautions';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import type { PlanDraft } from '#documents/plan/planDraft';
import { videoWishSentence } from '#documents/plan/videoWishSentence';
import { HowTo } from '#ui/components/HowTo';
import { KeyWords } from '#ui/components/KeyWords';
import { KitList } from '#ui/components/KitList';
import { PlanItems } from '#ui/components/PlanItems';
import { RedFlagList } from '#ui/components/RedFlagList';
import { StopRules } from '#ui/components/StopRules';
import { cameraPlace } from '#words/exerciseWords';
import { usePlanWritingState } from '../planWritingContext';

/** The sheet that the patient gets, as it is printed: when to stop comes before what to do. */
export function PlanSheet() {
  const draft = usePlanWritingState((state) => state.draft);
  const { items, patient, words, howOften, reviewDate, returnKey } = draft;
  const perWeek = perWeekSentence(draft);
  const videoWish = videoWishSentence(draft);
  return (
    <article className="card plan-sheet" aria-label="The patient’s sheet">
      <h2>Exercises for {patient.trim() === '' ? '…' : patient}</h2>
      {perWeek !== null && <p>{perWeek}</p>}
      {howOften !== '' && <p>{howOften}</p>}
      {words !== '' && <blockquote className="plan-words">{words}</blockquote>}
      <Stops draft={draft} />
      {items.length === 0 ? (
        <p className="soft">No task yet.</p>
      ) : (
        <>
          <Ready draft={draft} />
          <h3>What to do</h3>
          <PlanItems items={items} more={(item) => <HowTo item={item} />} />
        </>
      )}
      {reviewDate !== null && <p>We will review this on {reviewDate}.</p>}
      {videoWish !== null && <p>{videoWish}</p>}
      {returnKey !== null && (
        <p>
          What you send back opens only with my key. Its words are <KeyWords of={returnKey} />: you see the
          same ones where the plan is opened and where a session is sent. If they differ, ask me before you
          send anything.
        </p>
      )}
    </article>
  );
}

function Stops({ draft }: { draft: PlanDraft }) {
  const { stop, beyondPainLimit, ifItGivesWay, defer } = cautionsOf(draft);
  return (
    <div className="plan-stops">
      <section>
        <h3>When to stop</h3>
        <StopRules stop={stop} beyondPainLimit={beyondPainLimit} ifItGivesWay={ifItGivesWay} />
      </section>
      <section>
        <h3>Do not exercise, and contact a professional, if</h3>
        <RedFlagList />
        <p>{defer}</p>
      </section>
    </div>
  );
}

/** What to have ready, and where the camera goes: for filmed tasks, one place each. */
function Ready({ draft: { items, footwear } }: { draft: PlanDraft }) {
  const places = new Set(items.flatMap(({ task }) => cameraPlace(task) ?? []));
  return (
    <>
      <section>
        <h3>Have this ready</h3>
        <KitList items={items} footwear={footwear} />
      </section>
      {places.size > 0 && (
        <section>
          <h3>Where the camera goes</h3>
          {[...places].map((place) => (
            <p key={place}>{place}</p>
          ))}
        </section>
      )}
    </>
  );
}
