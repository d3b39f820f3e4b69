import { Button, FileTrigger } from 'react-aria-components';
import { dateInWords } from '#words/dateWords';
import { oneDecimal } from '#words/oneDecimal';
import { usePatients, usePatientsState } from '../patientsContext';
import {
  answersWords,
  questionnaireCourses,
  seriesSentences,
  type QuestionnaireCourse,
} from '../rules/questionnaireCourse';
import { scoreOf } from '../rules/questionnaireForm';
import { FoldCard } from './FoldCard';
import { OpensForm } from './OpensForm';
import { QuestionnaireEntry } from './QuestionnaireEntry';
import { ScorePlot } from './ScorePlot';
import { TakeOut } from './TakeOut';

/** What the patient says, by questionnaires: three that are built in, and those that the practice imported. */
export function QuestionnairesCard() {
  const patients = usePatients();
  const answered = usePatientsState((state) => state.patient?.questionnaires) ?? [];
  const imported = usePatientsState((state) => state.imported);
  const courses = questionnaireCourses(answered);
  return (
    <FoldCard
      id="questionnaires-title"
      title="Questionnaires"
      empty={courses.length === 0 ? 'None is written down yet.' : null}
    >
      {courses.map((course) => (
        <Course key={course.of} course={course} />
      ))}
      <OpensForm label="Write down answers">{(close) => <QuestionnaireEntry onClose={close} />}</OpensForm>
      <details className="small">
        <summary>Questionnaires of this practice ({imported.length})</summary>
        <p>
          The file is a Questionnaire of FHIR R4 in JSON, which your practice has the right to use. It stays
          on this device and in its backups. A score is made only where its rule is published and free.
        </p>
        <ul className="programme-list">
          {imported.map(({ url, title, version }) => (
            <li key={url}>
              {title}
              {version !== null && `, version ${version}`}: {url}{' '}
              <Button className="link-button" onPress={() => void patients.removeQuestionnaire(url)}>
                Remove
              </Button>
            </li>
          ))}
        </ul>
        <FileTrigger
          acceptedFileTypes={['application/json', '.json']}
          onSelect={(files) => {
            const [file] = files ?? [];
            if (file !== undefined) void patients.importQuestionnaire(file);
          }}
        >
          <Button className="button">Import a questionnaire …</Button>
        </FileTrigger>
      </details>
    </FoldCard>
  );
}

function Course({ course }: { course: QuestionnaireCourse }) {
  const patients = usePatients();
  const { of, title, records, series, others, notTold } = course;
  const last = records.at(-1)!;
  const why = scoreOf(of, last.answers).why;
  return (
    <article className="programme-item">
      <h4>{title}</h4>
      {series.map((one) => {
        const [value, ...more] = seriesSentences(one);
        return (
          value !== undefined && (
            <div key={one.name}>
              <p>{value}</p>
              {more.length > 0 && <p className="small soft">{more.join(' ')}</p>}
              {one.points.length > 1 && <ScorePlot series={one} />}
            </div>
          )
        );
      })}
      {why !== null && <p>{why}</p>}
      {others > 0 && (
        <p className="small">Asked about something else, or another version, and not compared: {others}.</p>
      )}
      {notTold !== null && <p className="small soft">{notTold}</p>}
      <details className="small">
        <summary>Each time it was answered ({records.length})</summary>
        <ul className="programme-list">
          {[...records].reverse().map((record) => (
            <li key={record.id}>
              {dateInWords(record.on)}, {record.by}
              {record.score !== null && `, score ${oneDecimal(record.score)}`}: {answersWords(record)}{' '}
              <Button className="link-button" onPress={() => patients.saveResponse(record)}>
                Save as FHIR
              </Button>{' '}
              <TakeOut list="questionnaires" id={record.id} what="this questionnaire" />
            </li>
          ))}
        </ul>
      </details>
    </article>
  );
}
