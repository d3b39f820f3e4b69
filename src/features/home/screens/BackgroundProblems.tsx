import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHomeState } from '../homeContext';

/** What went wrong with re-measuring stored videos; nothing where nothing did. */
export function BackgroundProblems() {
  const problems = useHomeState((state) => state.background.problems);
  return problems.map((problem) => (
    <Message key={problem} kind="caution" title={message('background.problem')}>
      {problem}
    </Message>
  ));
}
