import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { message } from '#words/messages/message';
import { UpdateMessage } from './UpdateMessage';
import './start.css';

interface Props {
  /** One sentence on what it is for. */
  title: string;
  children: ReactNode;
  /** Buttons of the head. */
  ways?: ReactNode;
  foot?: ReactNode;
}

/** Around every first page: what is open, what failed, and a newer version. */
export function StartFrame({ title, children, ways, foot }: Props) {
  const review = useReview();
  const navigation = useNavigation();
  const problem = useReviewState((state) => state.problem);
  const hasResult = useReviewState((state) => state.recording !== null);
  return (
    <div className="start">
      <header className="page-head">
        <Brand />
        <nav className="start-ways">
          {hasResult && (
            <Button className="button button-quiet" onPress={() => void navigation.show('review')}>
              {message('start.to-result')}
            </Button>
          )}
          {ways}
        </nav>
      </header>
      <main className="start-main">
        <h1>{title}</h1>
        <UpdateMessage hasResult={hasResult} />
        <ProblemMessage problem={problem} onClose={() => review.dismissProblem()} />
        {children}
      </main>
      <footer className="start-foot small">
        <a href="./licences.txt" target="_blank" rel="noreferrer">
          {message('start.licences')}
        </a>
        {foot}
      </footer>
    </div>
  );
}
