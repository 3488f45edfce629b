import { defineIntent } from '../define-intent.ts';
import { answerRig } from './answer.ts';
import { answerGearAsked } from './asked.ts';
import { changeRig } from './compute.ts';

/** My rig is …; show, change or forget it. Gear told without any question is kept as well. */
export const rig = defineIntent({
  name: 'rig',
  title: 'Your rig',
  isOfGear: true,
  isForAdmins: true,
  hasNoSum: true,
  isOfNow: true,
  reply: (_facts, setting) =>
    setting.gearAsked ? answerGearAsked(setting.gearAsked) : answerRig(changeRig(setting), setting),
});
