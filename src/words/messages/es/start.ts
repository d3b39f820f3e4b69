import type { start as english } from '../en/start';
import type { Translated } from '../translated';

export const start: Translated<typeof english> = {
  'start.title':
    'Overfoot muestra si tu rodilla se queda sobre el pie mientras haces ejercicio con una pierna.',
  'start.question': '¿Qué quieres hacer?',
  'start.exercise': 'Hago ejercicio',
  'start.exercise.what': 'Tu teléfono o tu portátil te graba y cuenta por ti.',
  'start.treat': 'Trato a pacientes',
  'start.treat.what': 'Escribir planes, ver sesiones, medir un video (en inglés).',
  'start.example': 'Ver un ejemplo',
  'start.example.opening': 'Abriendo el ejemplo …',
  'start.example.what': 'Una persona inventada se levanta seis veces de una silla.',
  'start.stays': 'Tu video se queda en este dispositivo.',
  'start.offline': '{title} Overfoot está guardado en este dispositivo y se abre sin ella.',
  'start.offline.title': 'Sin conexión a la red:',
  'start.to-result': 'Volver al resultado',
  'start.licences': 'Licencias',
  'start.newer': 'Hay una versión nueva de Overfoot',
  'start.newer.start': 'Usarla',
  'start.newer.starting': 'Abriendo …',
  'start.newer.other-tabs':
    'Overfoot está abierto en otra pestaña, y puede que allí haya una serie en marcha. Cierra las otras pestañas y después usa la versión nueva.',
  'start.newer.reloads':
    'La página se volverá a cargar. No se pierde nada de lo guardado en este dispositivo.',
  'start.newer.save': 'Guarda antes el resultado abierto: se perderá al volver a cargar la página.',
};
