import { useEffect, useRef, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

interface Props {
  title: string;
  children?: ReactNode;
  /** What is pressed to continue, within reach of a thumb; the primary button comes first. */
  actions?: ReactNode;
  /** Shows the page before this one, by the browser's Back as well. */
  back?: (() => void) | undefined;
  /** Another way out, in the corner. */
  leave?: { words: string; onPress: () => void } | undefined;
}

/** One page to be read at the device: one thing to do, and the way on at the bottom. */
export function HomePage({ title, children, actions, back, leave }: Props) {
  const home = useHome();
  const navigation = useNavigation();
  const problem = useHomeState((state) => state.problem);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // Anyone who can't see the page hears where the last press led.
    heading.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [title]);
  const latestBack = useRef(back);
  useEffect(() => {
    latestBack.current = back;
  });
  const hasPageBefore = back !== undefined;
  useEffect(
    () => navigation.openPage(hasPageBefore ? () => latestBack.current?.() : null),
    [title, hasPageBefore, navigation],
  );
  const out = hasPageBefore ? { words: message('home.back'), onPress: () => navigation.pageBack() } : leave;
  return (
    <div className="home">
      <header className="page-head">
        <Brand />
        {out !== undefined && (
          <Button className="button button-quiet" onPress={out.onPress}>
            {out.words}
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
