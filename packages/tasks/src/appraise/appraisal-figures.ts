import { english, type Language } from '@becket/core';
import type { Job } from '@becket/journal';
import type { AppraisalFigures } from '@becket/papers';
import { compareSurveys } from './compare-surveys.ts';
import { decisionAdvice } from './decision-advice.ts';
import { pinChoice } from './pin-choice.ts';

/** What is worked out for the appraisal papers: torque, pins, earlier surveys, reasons and what is unknown. */
export function appraisalFigures(job: Job, language: Language = english): AppraisalFigures {
  const pins = pinChoice(job, { language });
  return {
    torque: pins.map,
    pins,
    comparison: compareSurveys(job, { language }),
    advice: decisionAdvice(job, pins, language),
  };
}
