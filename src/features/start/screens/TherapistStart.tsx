import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { useNavigation } from '#shell/navigation/navigationContext';
import { useTracking } from '#shell/tracking/trackingContext';
import { useRole } from '../roleContext';
import { DeviceLine } from './DeviceLine';
import { LanePicture } from './LanePicture';
import { MeasureForm } from './MeasureForm';
import { OfflineLine } from './OfflineLine';
import { StartFrame } from './StartFrame';

/** What it is for, and three ways in: exercise at home, view the example, or measure a video. */
export function TherapistStart() {
  const review = useReview();
  const navigation = useNavigation();
  const tracking = useTracking();
  const role = useRole();
  const opening = useReviewState((state) => state.opening);

  useEffect(() => {
    // The network starts while the person reads, so that the first measurement need not wait for it.
    const timer = setTimeout(() => void tracking.prepare(), 1500);
    return () => clearTimeout(timer);
  }, [tracking]);

  return (
    <StartFrame
      title="Overfoot checks in a video whether the knee stays over the foot, and the hip over the knee, in every repetition of a single-leg exercise."
      ways={
        <>
          <Button className="button button-quiet" onPress={() => void navigation.show('plan')}>
            Write a plan
          </Button>
          <Button className="button button-quiet" onPress={() => void navigation.show('patients')}>
            Patients
          </Button>
          <Button className="button button-quiet" onPress={() => void navigation.show('sessions')}>
            Kept sessions
          </Button>
          <Button className="button button-quiet" onPress={() => void navigation.show('mirror')}>
            Live mirror
          </Button>
        </>
      }
      foot={
        <Button className="button button-quiet" onPress={() => role.choose('exercises')}>
          I exercise on this device
        </Button>
      }
    >
      <div className="start-doors">
        <section className="card start-door start-home" aria-labelledby="home-title">
          <h2 id="home-title">Exercise at home</h2>
          <p>
            With your therapist’s plan, or without one. Your phone or laptop films you, tells you where to
            stand, and counts for you.
          </p>
          <Button className="button button-primary" onPress={() => void navigation.show('home')}>
            Record yourself
          </Button>
        </section>
        <section className="card start-door start-example" aria-labelledby="example-title">
          <h2 id="example-title">See an example</h2>
          <LanePicture />
          <p>
            An invented, rendered person stands up six times from a chair. Sometimes the knee leaves its lane.
          </p>
          <Button
            className="button"
            isDisabled={opening === 'example'}
            onPress={() => void review.openExample()}
          >
            {opening === 'example' ? 'Opening the example …' : 'Open the example'}
          </Button>
        </section>
        <section className="card start-door start-own" aria-labelledby="own-title">
          <h2 id="own-title">Measure your own video</h2>
          <MeasureForm />
        </section>
      </div>
      <section className="start-notes" aria-label="What to know">
        <div>
          <h2>How to film</h2>
          <ul className="start-list">
            <li>Camera square in front of the person, about knee to hip high, and still.</li>
            <li>The whole body in the picture all the time, feet included; nobody else.</li>
            <li>Knees bare or in close-fitting clothes, light from the front, rest before and after.</li>
            <li>
              For an exercise on one leg, first two easy bends with both feet on the floor: they show how the
              body is turned to the camera.
            </li>
            <li>A stable chair against a wall, a clear and dry floor, something to hold within reach.</li>
          </ul>
        </div>
        <div>
          <h2>Before you rely on it</h2>
          <ul className="start-list">
            <li>
              It shows how the leg is aligned in a video, and how far each angle may be off. It makes no
              diagnosis and says nothing about the risk of injury.
            </li>
            <li>
              Do the exercise only as your physiotherapist or doctor has shown you; what they say comes first.
            </li>
            <li>
              Stop when pain gets sharp or the knee gives way, locks or swells, and ask them before you
              continue. A hot swollen knee, one that can’t bear weight, fever, or pain after a fall: do not
              exercise, contact a professional.
            </li>
          </ul>
        </div>
        <div>
          <h2>Your video stays here</h2>
          <p>
            Everything stays on this device: a video is read, measured and drawn in this browser, what you
            record at home is kept in it, and nothing is sent anywhere, unless you share within your practice.
          </p>
          <OfflineLine />
          <DeviceLine />
        </div>
      </section>
    </StartFrame>
  );
}
