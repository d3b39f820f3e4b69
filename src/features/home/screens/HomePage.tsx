import { useEffect, useRef, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { useHome, useHomeState } from '../homeContext';

interface Props {
  title: string;
  children?: ReactNode;
  /** What is pressed to continue, within reach of a thumb; the primary button comes first. */
  actions?: ReactNode;
  /** The way back or out, in the corner. */
  leave?: { words: string; onPress: () => void } | undefined;
}

/** One page to be read at the device: one thing to do, and the way on at the bottom. */
export function HomePage({ title, children, actions, leave }: Props) {
  const home = useHome();
  const problem = useHomeState((state) => state.problem);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // Anyone who can't see the page hears where the last press led.
    heading.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [title]);
  return (
    <div className="home">
      <header className="page-head">
        <Brand />
        {leave !== undefined && (
          <Button className="button button-quiet" onPress={leave.onPress}>
            {leave.words}
          </Button>
        )}
      </header>
      <main className="home-main">
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <ProblemMessage problem={problem} onClose={() => home.dismissProblem()} />
        {children}
      </main>
      {actions !== undefined && <div className="home-bar">{actions}</div>}
    </div>
  );
}
