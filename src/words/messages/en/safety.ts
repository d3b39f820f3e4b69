/** Warning signs, pain and when to stop. A sign is put as it follows 'Do not exercise if'. */
export const safety = {
  'sign.hot-joint': 'you have a fever or feel ill, or a joint is hot, red and swollen',
  'sign.hot-joint.advice': 'Do not exercise. See a doctor today.',
  'sign.calf':
    'one calf is newly swollen, warm or painful; this counts most after surgery, or after weeks in bed or in a cast',
  'sign.calf.advice':
    'Do not exercise. See a doctor today. With chest pain, or if you are short of breath, call the emergency number at once.',
  'sign.no-weight': 'you cannot put weight on the leg',
  'sign.no-weight.advice': 'Do not exercise. See a doctor today.',
  'sign.fall-or-blow':
    'you have had a fall or a blow to the knee, and one of these is true: you are 55 or older; pressing on the kneecap hurts; pressing on the bony bump on the outside just below the knee hurts; you cannot bend the knee to a right angle; you could not take four steps right after it, or you cannot now',
  'sign.fall-or-blow.advice': 'Do not exercise. See a doctor today.',
  'sign.swollen-after-twist': 'you twisted or hit the knee, and it swelled up within hours',
  'sign.swollen-after-twist.advice': 'Do not exercise. See a doctor today.',
  'sign.straight-leg':
    'you cannot lift the leg with the knee straight, or you felt a pop and the leg is suddenly weak',
  'sign.straight-leg.advice': 'Do not exercise. See a doctor today.',
  'sign.shape': 'the knee looks a different shape, or it is stuck and cannot be straightened',
  'sign.shape.advice': 'Do not exercise. See a doctor today.',
  'sign.cold-foot': 'one foot has turned cold, pale or blue',
  'sign.cold-foot.advice': 'Do not exercise. Get a doctor’s help at once; call the emergency number.',
  'sign.numbness': 'the leg or foot is newly numb, tingling or weak',
  'sign.numbness.advice':
    'Do not exercise. Contact your therapist or doctor today. If you have trouble controlling your bladder or bowels, call the emergency number at once.',
  'sign.night-pain': 'the pain does not change with rest and wakes you night after night',
  'sign.night-pain.advice': 'Do not exercise. Contact your therapist or doctor today.',
  'sign.weight-loss': 'the pain never stops, and you are losing weight without trying, or have had cancer',
  'sign.weight-loss.advice': 'Do not exercise. Contact your therapist or doctor today.',
  'sign.young-limp': 'you are under 18, and you limp, or your hip, groin or thigh hurts',
  'sign.young-limp.advice':
    'Do not exercise. See a doctor today. Walk on it as little as you can until then.',
  'sign.wound': 'a wound on the leg opens, bleeds or oozes',
  'sign.wound.advice': 'Do not exercise. Contact your therapist or doctor today.',
  'sign.dizzy': 'you are dizzy or unsteady today',
  'sign.dizzy.advice':
    'Do not exercise. Contact your therapist or doctor today. With chest pain, or if you are short of breath, call the emergency number at once.',
  'sign.swollen': 'the knee is more swollen than usual',
  'sign.swollen.advice':
    'Do not exercise until your therapist or doctor has seen it. Contact one of them today.',
  'sign.much-swollen': 'the knee is much more swollen than usual',
  'sign.much-swollen.advice': 'Do not exercise. See a doctor today.',
  'sign.gave-way': 'the knee gave way',
  'sign.gave-way.advice':
    'Do not exercise until your therapist or doctor has seen it. Contact one of them today.',
  'sign.locked': 'the knee locked or got stuck',
  'sign.locked.advice':
    'Do not exercise until your therapist or doctor has seen it. Contact one of them today.',
  'sign.fell': 'you have had a fall, or a blow to the knee',
  'sign.fell.advice':
    'Do not exercise until your therapist or doctor has seen it. Contact one of them today. See a doctor today if you are 55 or older, if pressing on the kneecap or on the bony bump outside just below the knee hurts, or if you cannot bend the knee to a right angle or take four steps.',

  'new.ask.swelling': 'Knee more swollen?',
  'new.less-swollen': 'Less',
  'new.swollen': 'More',
  'new.much-swollen': 'Much more',
  'new.ask.let-down': 'Did it fail you?',
  'new.gave-way': 'It gave way',
  'new.locked': 'It locked',
  'new.ask.else': 'Anything else?',
  'new.fell': 'A fall or blow',
  'new.hot-joint': 'Fever, or hot, red joint',
  'new.calf': 'Swollen, warm or painful calf',
  'new.numbness': 'Numbness, tingling or weakness',

  'pain.before': 'How much does your knee hurt right now?',
  'pain.before-both': 'How much do your knees hurt right now?',
  'pain.during':
    'How much did your {side, select, left {left knee} right {right knee} other {knee}} hurt during this set, at its most?',
  'pain.during-unfilmed': 'How much did your knee hurt during the exercises, at its most?',
  'pain.after':
    'How much does your {side, select, left {left knee} right {right knee} other {knee}} hurt now, afterwards?',
  'pain.effort': 'How hard was it?',
  'pain.knee': '{side, select, left {Left knee} other {Right knee}}',
  'pain.none': 'no pain',
  'pain.little': 'a little pain',
  'pain.some': 'some pain',
  'pain.strong': 'strong pain',
  'pain.worst': 'the worst pain you can think of',
  'effort.none': 'no effort at all',
  'effort.light': 'light',
  'effort.medium': 'medium',
  'effort.hard': 'hard',
  'effort.most': 'as hard as I can',

  'caution.no-plan':
    'Rest, and ask your therapist or doctor before you continue. Only they can say how much pain is right for you.',
  'caution.gives-way': 'Do not exercise again until your therapist or doctor has seen it.',
  'caution.pain':
    '{limit, plural, =0 {Stop at any pain.} other {Stop when the pain goes above # out of 10.}}',
  'caution.stop-gives-way': 'Stop when the knee gives way.',
  'caution.stop-locks': 'Stop when the knee locks or gets stuck.',
  'caution.stop-swells':
    'Stop when the knee swells, and do not continue until your therapist or doctor has seen it.',
  'caution.stop-dizzy': 'Stop when you feel dizzy or unsteady, and sit down.',
  'caution.defer':
    'What your therapist or doctor told you comes before anything said here. This program measures how the knee stands over the foot; it does not examine you.',
  'caution.therapist-says': 'Your therapist says: {words}',
  'caution.first-beyond-limit': 'Stop for today, rest the leg, and contact me before the next session.',
  'caution.first-gives-way': 'Stop for today, and contact me before the next session.',
  'pain.too-much.before': 'It hurts {score} out of 10 now, which is above {limit}. Do not exercise today.',
  'pain.too-much.during':
    'It hurt {score} out of 10 in this set, which is above {limit}. Stop here for today.',
  'pain.too-much.after':
    'It hurts {score} out of 10 now, which is above {limit}. That was too much for today.',

  'concern.gave-way': 'Your knee gave way.',
  'concern.locked': 'Your knee locked or got stuck.',
  'concern.dizzy': 'You felt dizzy or unsteady.',
  'concern.fell': 'You fell.',
  'concern.fell.doctor':
    'See a doctor today if you are 55 or older. See one too if it hurts to press on the kneecap, or on the bony bump outside just below the knee. Go as well if you cannot bend the knee to a right angle, or cannot take four steps.',
  'concern.stopped-pain': 'You stopped because of pain.',
  'concern.pain': 'It hurt {score} out of 10.',

  'rules.after-pain': 'What to do after pain:',
  'rules.gave-way': 'If the knee gave way, locked or got stuck:',
  'rules.afterwards': 'What to do then',
} as const;
