/**
 * The exercises as the patient reads and hears them. Steps, and what to watch, are one per line; `{side}` is the
 * working side. What only the therapist reads of an exercise stands with it in `src/core/exercises`.
 */
export const exercises = {
  'exercise.split-stance-sit-to-stand.name': 'Split-stance sit-to-stand',
  'exercise.split-stance-sit-to-stand.side-hint': 'The working leg is the one whose foot is in front.',
  'exercise.split-stance-sit-to-stand.setup':
    'The chair stands with its back to the wall, its front to the camera.\nSit on its front half, both feet on the floor.\nPut your {side, select, left {left foot in front and your right foot} other {right foot in front and your left foot}} a little behind it.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.split-stance-sit-to-stand.start':
    'Sit down, {side, select, left {left foot} other {right foot}} in front.',
  'exercise.split-stance-sit-to-stand.steps':
    'Bring the weight over the {side, select, left {left foot: the left knee} other {right foot: the right knee}} comes forward over the toes, and the chest stays up.\nPush through the {side, select, left {left heel and stand up; the right leg} other {right heel and stand up; the left leg}} helps only as much as needed.\nStand tall for a moment.\nSit back slowly: the hips go back and the knee comes forward again, until you touch the seat.',
  'exercise.split-stance-sit-to-stand.cautions':
    'The chair must stand against a wall: it is pushed backwards each time you sit down.',

  'exercise.single-leg-sit-to-stand.name': 'Single-leg sit-to-stand',
  'exercise.single-leg-sit-to-stand.side-hint': 'The working leg is the one whose foot stays on the floor.',
  'exercise.single-leg-sit-to-stand.setup':
    'The chair stands with its back to the wall, its front to the camera.\nSit on its front half, both feet on the floor.\nLift your {side, select, left {right foot} other {left foot}} just off the floor; put it down again whenever you need it.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.single-leg-sit-to-stand.start':
    'Sit down, and get ready on your {side, select, left {left leg} other {right leg}}.',
  'exercise.single-leg-sit-to-stand.steps':
    'Bring the {side, select, left {left knee} other {right knee}} forward over the toes, chest up, and stand up on that leg.\nStand tall for a moment; the {side, select, left {right foot} other {left foot}} may touch the floor.\nSit back slowly on the {side, select, left {left leg} other {right leg}}: the hips go back and the knee comes forward again.',
  'exercise.single-leg-sit-to-stand.cautions':
    'The chair must stand against a wall: it is pushed backwards each time you sit down.\nPut the other foot down whenever you feel unsteady.',

  'exercise.single-leg-squat.name': 'Single-leg squat',
  'exercise.single-leg-squat.side-hint': 'The working leg is the one that is stood on.',
  'exercise.single-leg-squat.setup':
    'Stand with what you hold on to beside you, not in front.\nStand on your {side, select, left {left leg and bend the right knee} other {right leg and bend the left knee}} so that the foot is behind you.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.single-leg-squat.start': 'Stand on your {side, select, left {left leg} other {right leg}}.',
  'exercise.single-leg-squat.steps':
    'Stand tall.\nSit back and bend the {side, select, left {left knee} other {right knee}}, only as far as it stays over the foot and without pain.\nPush through the heel and straighten up.',
  'exercise.single-leg-squat.cautions': 'Put the other foot down whenever you feel unsteady.',

  'exercise.sliding-leg-squat.name': 'Sliding-leg squat',
  'exercise.sliding-leg-squat.side-hint': 'The working leg is the planted one; the other slides.',
  'exercise.sliding-leg-squat.setup':
    'Stand with what you hold on to beside you, not in front.\nKeep your {side, select, left {left foot planted; the right foot} other {right foot planted; the left foot}} rests on the cloth and slides.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.sliding-leg-squat.start':
    'Stand with your weight on your {side, select, left {left leg} other {right leg}}.',
  'exercise.sliding-leg-squat.steps':
    'Put the weight on the {side, select, left {left leg} other {right leg}}.\nSit back, bend the {side, select, left {left knee and let the right foot} other {right knee and let the left foot}} slide away to the side.\nStop before the {side, select, left {left knee} other {right knee}} leaves the middle of the foot.\nPush up through the {side, select, left {left heel; the right foot} other {right heel; the left foot}} only follows. Do not pull it back.',
  'exercise.sliding-leg-squat.cautions':
    'The planted foot must not slide. It needs bare floor or a firm sole under it; the cloth goes under the other foot only.',

  'exercise.lateral-step-down.name': 'Lateral step-down',
  'exercise.lateral-step-down.side-hint': 'The working leg is the one on the step.',
  'exercise.lateral-step-down.setup':
    'Put the step where you can hold on to something beside it.\nStand with your {side, select, left {left foot on the step, close to its edge, and the right foot} other {right foot on the step, close to its edge, and the left foot}} hanging beside it.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.lateral-step-down.start':
    'Stand on the step with your {side, select, left {left leg} other {right leg}}.',
  'exercise.lateral-step-down.steps':
    'Bend the {side, select, left {left knee until the right heel} other {right knee until the left heel}} nearly touches the floor.\nStraighten the {side, select, left {left knee; do not push off with the right foot} other {right knee; do not push off with the left foot}}.',
  'exercise.lateral-step-down.cautions':
    'The step must not tip or slide. Hold on to something until you are sure of it.',

  'exercise.hip-abduction-on-bent-leg.name': 'Hip abduction on a bent stance leg',
  'exercise.hip-abduction-on-bent-leg.side-hint':
    'The working leg is the bent one that is stood on; the other moves out to the side.',
  'exercise.hip-abduction-on-bent-leg.setup':
    'Stand with what you hold on to on your {side, select, left {left side} other {right side}}, within reach.\nStand on your {side, select, left {left leg with the knee a little bent; the right leg} other {right leg with the knee a little bent; the left leg}} will move out to the side.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.hip-abduction-on-bent-leg.start':
    'Stand on your {side, select, left {left leg} other {right leg}}, knee a little bent.',
  'exercise.hip-abduction-on-bent-leg.steps':
    'Keep the {side, select, left {left knee} other {right knee}} a little bent all along.\nMove the {side, select, left {right leg} other {left leg}} out to the side and a little backwards, toes forward.\nBring it back without a swing.',
  'exercise.hip-abduction-on-bent-leg.cautions': 'Put the other foot down whenever you feel unsteady.',

  'exercise.two-legged-bend.name': 'Two-legged bend',
  'exercise.two-legged-bend.side-hint': 'Both legs work; the side says which knee is judged.',
  'exercise.two-legged-bend.setup':
    'Stand on both feet, hip-wide, with what you hold on to beside you.\nFace the camera squarely: both hips and both shoulders equally far from it.',
  'exercise.two-legged-bend.start': 'Stand on both feet.',
  'exercise.two-legged-bend.steps':
    'Stand on both feet, hip-wide, toes a little outward.\nBend both knees, each over the middle of its foot, heels down.\nStraighten up.',
  'exercise.two-legged-bend.cautions': '',

  'exercise.quad-press-hold.name': 'Quadriceps press, held',
  'exercise.quad-press-hold.setup':
    'Get into the position that you were shown, with the ball behind your {side, select, left {left thigh} other {right thigh}}.\nLying, a roll under the thigh does as well. Standing, the ball goes between the back of the thigh and a wall.',
  'exercise.quad-press-hold.start':
    'Get into position, ball behind your {side, select, left {left thigh} other {right thigh}}.',
  'exercise.quad-press-hold.steps':
    'Press the {side, select, left {left thigh} other {right thigh}} back into the ball, and the heel down as well.\nTighten the muscle above the knee, as hard as you can without pain.\nKeep breathing; hold until the time is over.\nLet go slowly.',
  'exercise.quad-press-hold.cautions':
    'The knee must not hurt while you press: press less, or stop.\nDo not hold your breath: it raises your blood pressure.',

  'exercise.bridge-hold.name': 'Bridge, held',
  'exercise.bridge-hold.setup':
    'Lie on your back with both knees bent and both feet flat.\nPut most of the weight on the {side, select, left {left foot} other {right foot}}, as you were shown.',
  'exercise.bridge-hold.start':
    'Lie down, with most of the weight on the {side, select, left {left foot} other {right foot}}.',
  'exercise.bridge-hold.steps':
    'Push through the {side, select, left {left heel} other {right heel}} and lift your hips.\nKeep both hips at the same height and the ribs down.\nKeep breathing; hold until the time is over.\nLower your hips slowly.',
  'exercise.bridge-hold.cautions': 'Stop if your back hurts or the back of the thigh cramps.',

  'exercise.single-leg-stance-hold.name': 'Single-leg stance, held',
  'exercise.single-leg-stance-hold.setup': 'Stand with what you hold on to beside you, not in front.',
  'exercise.single-leg-stance-hold.start': 'Stand on your {side, select, left {left leg} other {right leg}}.',
  'exercise.single-leg-stance-hold.steps':
    'Stand on the {side, select, left {left leg and lift the right foot} other {right leg and lift the left foot}}.\nKeep the {side, select, left {left knee} other {right knee}} soft and your belt level.\nHold until the time is over.',
  'exercise.single-leg-stance-hold.cautions': 'Put the other foot down whenever you feel unsteady.',

  'exercise.wall-sit-hold.name': 'Wall sit, held',
  'exercise.wall-sit-hold.setup':
    'Lean your back against the wall, feet a step away from it, hip-wide.\nPut more of your weight on the {side, select, left {left leg} other {right leg}}, as you were shown.',
  'exercise.wall-sit-hold.start':
    'Lean on the wall, with more weight on the {side, select, left {left leg} other {right leg}}.',
  'exercise.wall-sit-hold.steps':
    'Slide down the wall as far as you were shown and without pain.\nKeep the {side, select, left {left knee} other {right knee}} over the middle of the foot.\nKeep breathing; hold until the time is over.\nPush up through the heels.',
  'exercise.wall-sit-hold.cautions':
    'The floor in front of the wall must not be slippery.\nDo not hold your breath: it raises your blood pressure.',

  'exercise.side-bridge-hold.name': 'Side bridge, held',
  'exercise.side-bridge-hold.setup':
    'Lie on your {side, select, left {left side} other {right side}}, on something soft.\nPut the elbow under the shoulder, and the forearm to the front.\nBend the knees, or keep the legs straight, as you were shown.',
  'exercise.side-bridge-hold.start': 'Lie on your {side, select, left {left side} other {right side}}.',
  'exercise.side-bridge-hold.steps':
    'Push the forearm into the floor and lift your hips.\nMake one line from head to {side, select, left {left knee or foot} other {right knee or foot}}.\nKeep breathing; hold until the time is over.\nLower your hips slowly.',
  'exercise.side-bridge-hold.cautions':
    'Stop if your shoulder, back or knee hurts.\nDo not hold your breath: it raises your blood pressure.',

  'exercise.felt.thigh':
    'You should feel it in the front of the {side, select, left {left thigh} other {right thigh}}, not at the outer side of the knee.',
  'exercise.felt.buttock':
    'You should feel it in the {side, select, left {left buttock} other {right buttock}}, not at the outer side of the knee.',
  'exercise.felt.thigh-and-buttock':
    'You should feel it in the {side, select, left {left thigh and buttock} other {right thigh and buttock}}, not at the outer side of the knee.',
  'exercise.felt.side-of-trunk':
    'You should feel it in the {side, select, left {left side of your trunk and hip} other {right side of your trunk and hip}}, not in the shoulder.',

  'exercise.camera':
    'Put the camera two to three metres in front of you, upright and level, at the height of your hips or a little below. Both feet, and your head, must be in the picture.',
  'exercise.then-other': 'Then the same with the {side, select, left {left leg} other {right leg}}.',
  'exercise.step-by-step': 'How to do it, step by step',

  'figure.front': 'from the front, {moment}',
  'figure.side': 'from the side, {moment}',
  'figure.oblique': 'from the front at an angle, {moment}',
  'figure.rise.start': 'seated',
  'figure.rise.end': 'standing',
  'figure.dip.start': 'standing',
  'figure.dip.end': 'bent',
  'figure.reach.start': 'start',
  'figure.reach.end': 'leg out',
  'figure.hold.start': 'before',
  'figure.hold.end': 'held',

  'need.clear-floor': 'Clear and dry floor',
  'need.clear-floor.sentence':
    'Clear the floor for two steps around you. It must be dry, with no loose rug and no cable.',
  'need.support': 'Something to hold',
  'need.support.sentence':
    'Have something firm within reach of one hand: a table, a worktop, the back of a heavy chair. It is for balance; do not lean on it.',
  'need.chair': 'Chair against a wall',
  'need.chair.sentence':
    'Take a firm chair without wheels, and put its back against a wall so that it cannot slide.',
  'need.step': 'Low, firm step',
  'need.step.sentence':
    'Take a low step that stands firm and cannot tip or slide, as high as you were shown.',
  'need.slide': 'Something that slides',
  'need.slide.sentence':
    'Put a folded cloth under the moving foot on a smooth floor. The other foot must not slide.',
  'need.ball': 'Small soft ball',
  'need.ball.sentence': 'Take the ball or rolled towel that you were shown.',
  'need.wall': 'Bare wall',
  'need.wall.sentence': 'Find a smooth wall with nothing on it, and dry floor in front of it that grips.',
  'need.loop': 'Loop band',
  'need.loop.sentence':
    'Check the band for tears each time, and stop if it tears. Do not use latex if you are allergic to it.',
  'need.tube': 'Tube band and anchor',
  'need.tube.sentence':
    'Fix the tube low, to something that cannot move, and test it with a pull. Look away from a stretched band. Stop if it tears. Do not use latex if you are allergic to it.',
  'need.weight': 'Weight',
  'need.weight.sentence': 'Take a weight that you can hold safely. Put it down when your grip gets tired.',
  'need.shoes': 'Shoes',
  'need.shoes.sentence': 'Wear firm shoes with soles that grip, as your plan says.',
  'need.bare-feet': 'Bare feet',
  'need.bare-feet.sentence': 'Take off shoes and socks, as your plan says.',
  'need.either': 'Shoes or bare feet',
  'need.either.sentence': 'Wear firm shoes or go barefoot. Socks alone slip.',
  'need.clothes': 'Visible knees',
  'need.clothes.sentence': 'Wear clothes that show the shape of your knees and end above the shoes.',
} as const;
