import type { report as english } from '../en/report';
import type { Translated } from '../translated';

export const report: Translated<typeof english> = {
  'report.title': 'Cómo van tus ejercicios, {day}',
  'report.invented': 'Los números de esta hoja son inventados, para mostrar cómo se ve.',
  'report.for': 'Para',
  'report.done': 'Hecho',
  'report.done-of':
    'Has hecho {done} de {due, plural, one {# sesión} other {# sesiones}} desde que empezó tu plan.',
  'report.done-count': 'Has hecho {done, plural, =0 {cero sesiones} one {# sesión} other {# sesiones}}.',
  'report.pain': 'Dolor',
  'report.pain-less':
    'Cuando haces los ejercicios, la rodilla te duele menos ahora: {now} de 10. Al principio era {then}. Eso es más que azar.',
  'report.pain-more':
    'Cuando haces los ejercicios, la rodilla te duele más ahora: {now} de 10. Al principio era {then}. Habla de ello con tu terapeuta.',
  'report.pain-same':
    'Dolor cuando haces los ejercicios: {now} de 10 ahora, {then} al principio. Un paso de más o de menos puede ser azar.',
  'report.knee': 'Tu rodilla {side, select, left {izquierda} other {derecha}}',
  'report.knee-less':
    '{exercise}: la rodilla va ahora menos hacia dentro que al principio. El cambio es mayor que el error de la cámara.',
  'report.knee-more':
    '{exercise}: la rodilla va ahora más hacia dentro que al principio. El cambio es mayor que el error de la cámara. Habla de ello con tu terapeuta.',
  'report.knee-same':
    '{exercise}: aún no se ve un cambio claro en cuánto va la rodilla hacia dentro. La cámara no ve los pasos pequeños.',
  'report.knee-unlike': '{exercise}: ahora lo haces de otra forma que al principio, y por eso no se compara.',
  'report.count':
    'En la última serie, de {low} a {high} de {of} repeticiones se quedaron sobre el pie. No se puede decir con más detalle.',
  'report.count-all': 'En la última serie, {low} de {of} repeticiones se quedaron sobre el pie.',
  'report.next': 'Después',
  'report.next-on': 'Tu terapeuta lo verá contigo otra vez el {day}.',
  'report.careful': 'Ten cuidado',
  'report.stop': 'Para si te duele más de {limit} de 10, o si la rodilla cede o se bloquea.',
  'report.how': 'Bueno saberlo',
  'report.how-what':
    'Una cámara vio tu pierna desde delante. Muestra cómo se mueve la rodilla, no por qué duele. Lo que dice tu terapeuta o tu médico va primero.',
};
