/** The first page, as somebody sees it who exercises. */
export const start = {
  'start.title': 'Overfoot shows whether your knee stays over your foot while you exercise on one leg.',
  'start.question': 'What would you like to do?',
  'start.exercise': 'I exercise',
  'start.exercise.what': 'Your phone or laptop films you and counts for you.',
  'start.treat': 'I treat people',
  'start.treat.what': 'Write plans, view sessions, measure a video.',
  'start.example': 'Show me an example',
  'start.example.opening': 'Opening the example …',
  'start.example.what': 'An invented person stands up six times from a chair.',
  'start.stays': 'Your video stays on this device.',
  'start.offline': '{title} Overfoot is kept on this device and opens without one.',
  'start.offline.title': 'Without a network:',
  'start.to-result': 'Back to the result',
  'start.licences': 'Licences',
  'start.newer': 'A newer version of Overfoot is ready',
  'start.newer.start': 'Start it',
  'start.newer.starting': 'Starting …',
  'start.newer.other-tabs':
    'It is open in another tab, where a set may be under way. Close the other tabs, then start it.',
  'start.newer.reloads': 'The page will reload. Nothing kept on this device is lost.',
  'start.newer.save': 'Save the open result first: it will be lost when the page reloads.',
} as const;
