import { dynamicStrengthIndex } from "../engine/jumps/dynamicStrengthIndex";
import { eccentricUtilisationRatio } from "../engine/jumps/eccentricUtilisationRatio";
import { flightContactRatio } from "../engine/jumps/flightContactRatio";
import { heightFromFlightTime } from "../engine/jumps/heightFromFlightTime";
import { heightFromTakeoffVelocity } from "../engine/jumps/heightFromTakeoffVelocity";
import { jumpPower as jumpPowerOf } from "../engine/jumps/jumpPower";
import { modifiedReactiveStrengthIndex } from "../engine/jumps/modifiedReactiveStrengthIndex";
import { type PowerEquationName, powerEquation, powerEquations } from "../engine/jumps/powerEquations";
import { reactiveStrengthIndex } from "../engine/jumps/reactiveStrengthIndex";
import { say } from "../language/say";
import { invalid, measured, type Words, wordOf } from "./border";
import { cellByCell, part } from "./spill";

const equationNames = powerEquations.map(({ name }) => name) as unknown as Words<PowerEquationName>;

/** Heights stand in centimetres in every sheet of this trade; the engine reckons in metres. */
const centimetresPerMetre = 100;

/**
 * Jump height from flight time, g t^2 / 8 with g 9.81, one for each cell. True only when take-off and landing posture are equal;
 * not comparable with heights by reach or force plate. Empty cells and zeros are missing.
 * @customfunction JUMPHEIGHT
 * @param flightTimes Flight times in seconds, not milliseconds, e.g. C4:C29 with 0.52.
 * @returns Jump height in cm, e.g. 33.2.
 * @example =TAPELINE.JUMPHEIGHT({0.52;0.498})
 * @source Uniform motion under gravity.
 */
export function jumpHeight(flightTimes: any[][]): any[][] {
  return cellByCell({ "flight time": measured(flightTimes) }, (jump) =>
    part(heightFromFlightTime(jump["flight time"]), (metres) => metres * centimetresPerMetre),
  );
}

/**
 * Jump height from vertical take-off velocity, v^2 / (2 g) with g 9.81, one for each cell. Empty cells and zeros are missing.
 * @customfunction JUMPHEIGHT.VELOCITY
 * @param velocities Take-off velocities in m/s, e.g. C4:C29 with 2.6.
 * @returns Jump height in cm, e.g. 34.5.
 * @example =TAPELINE.JUMPHEIGHT.VELOCITY({2.6;2.45})
 * @source Uniform motion under gravity.
 */
export function jumpHeightFromVelocity(velocities: any[][]): any[][] {
  return cellByCell({ "take-off velocity": measured(velocities) }, (jump) =>
    part(heightFromTakeoffVelocity(jump["take-off velocity"]), (metres) => metres * centimetresPerMetre),
  );
}

/**
 * Estimated power of a vertical jump from height and body mass, one for each cell. An athlete's error is hundreds of watts and
 * equations differ as much: no change in power when only body mass changed. Empty cells and zeros are missing.
 * @customfunction JUMPPOWER
 * @param heights Jump heights in cm, e.g. C4:C29.
 * @param masses Body masses in kg, e.g. D4:D29.
 * @param [equation] sayersSquatJump (when left out), sayersCountermovementJump, harmanPeak, harmanAverage, johnsonBahamondePeak, johnsonBahamondeAverage, canavanVescovi or lewis.
 * @param [statures] Body heights in cm, e.g. E4:E29; may be left out but for Johnson and Bahamonde's equations.
 * @returns Peak or average power in W, e.g. 3120.
 * @example =TAPELINE.JUMPPOWER({33.2;30.4},{66;71})
 * @source Each equation's own, e.g. Sayers et al. 1999, Med Sci Sports Exerc 31:572-577 (as quoted by secondary pages).
 */
export function jumpPower(heights: any[][], masses: any[][], equation?: string, statures?: any[][]): any[][] {
  const name = wordOf(equation, equationNames, say`power equation`);
  const jump = { "jump height": measured(heights), "body mass": measured(masses) };
  if (!powerEquation(name).needsStature) {
    return cellByCell(jump, (athlete) =>
      part(jumpPowerOf(athlete["jump height"], athlete["body mass"], { equation: name }), ({ watts }) => watts),
    );
  }
  if (!statures) throw invalid(say`The equation ${name} needs the body heights in cm as fourth argument.`);
  return cellByCell({ ...jump, "body height": measured(statures) }, (athlete) =>
    part(
      jumpPowerOf(athlete["jump height"], athlete["body mass"], {
        equation: name,
        statureCentimetres: athlete["body height"],
      }),
      ({ watts }) => watts,
    ),
  );
}

/**
 * Reactive strength index of drop or rebound jumps, jump height divided by contact time, one for each cell. RSI.FLIGHT is
 * another number under the same name. Empty cells and zeros are missing.
 * @customfunction RSI
 * @param heights Jump heights in cm, e.g. C4:C29.
 * @param contactTimes Contact times in seconds, e.g. D4:D29 with 0.18.
 * @returns Index in m/s, e.g. 1.67.
 * @example =TAPELINE.RSI({30;27},{0.18;0.21})
 * @source Young 1995; Flanagan & Comyns 2008 (from memory).
 */
export function reactiveStrength(heights: any[][], contactTimes: any[][]): any[][] {
  return cellByCell({ "jump height": measured(heights), "contact time": measured(contactTimes) }, (jump) =>
    reactiveStrengthIndex(jump["jump height"] / centimetresPerMetre, jump["contact time"]),
  );
}

/**
 * Reactive strength index in its other form, flight time divided by contact time, one for each cell. Empty cells and zeros are
 * missing.
 * @customfunction RSI.FLIGHT
 * @param flightTimes Flight times in seconds, e.g. C4:C29 with 0.5.
 * @param contactTimes Contact times in seconds, e.g. D4:D29 with 0.18.
 * @returns Index without unit, e.g. 2.78.
 * @example =TAPELINE.RSI.FLIGHT({0.5;0.47},{0.18;0.21})
 * @source Flanagan & Comyns 2008 (from memory).
 */
export function reactiveStrengthFromFlight(flightTimes: any[][], contactTimes: any[][]): any[][] {
  return cellByCell({ "flight time": measured(flightTimes), "contact time": measured(contactTimes) }, (jump) =>
    flightContactRatio(jump["flight time"], jump["contact time"]),
  );
}

/**
 * Modified reactive strength index of countermovement jumps, jump height divided by time to take-off, one for each cell. Empty
 * cells and zeros are missing.
 * @customfunction RSI.MODIFIED
 * @param heights Jump heights in cm, e.g. C4:C29.
 * @param timesToTakeoff Times from the start of the movement to take-off in seconds, e.g. D4:D29 with 0.72.
 * @returns Index in m/s, e.g. 0.49.
 * @example =TAPELINE.RSI.MODIFIED({35;32},{0.72;0.78})
 * @source Ebben & Petushek 2010, J Strength Cond Res 24:1983-1987 (from memory).
 */
export function modifiedReactiveStrength(heights: any[][], timesToTakeoff: any[][]): any[][] {
  return cellByCell({ "jump height": measured(heights), "time to take-off": measured(timesToTakeoff) }, (jump) =>
    modifiedReactiveStrengthIndex(jump["jump height"] / centimetresPerMetre, jump["time to take-off"]),
  );
}

/**
 * Dynamic strength index, peak force of the jump divided by peak force of the isometric mid-thigh pull, one for each cell. It also
 * rises when the pull gets worse, so read both forces. Empty cells and zeros are missing.
 * @customfunction DYNAMICSTRENGTH
 * @param jumpForces Peak forces of the jump in N, e.g. C4:C29.
 * @param pullForces Peak forces of the pull in N, both with or both without body weight, e.g. D4:D29.
 * @returns Index without unit, e.g. 0.72.
 * @example =TAPELINE.DYNAMICSTRENGTH({1620;1480},{2250;1900})
 * @source Sheppard et al. 2011 (from memory).
 */
export function dynamicStrength(jumpForces: any[][], pullForces: any[][]): any[][] {
  return cellByCell({ "force of the jump": measured(jumpForces), "force of the pull": measured(pullForces) }, (test) =>
    part(dynamicStrengthIndex(test["force of the jump"], test["force of the pull"]), ({ index }) => index),
  );
}

/**
 * Eccentric utilisation ratio, countermovement jump divided by squat jump, one for each cell. Below 1 the squat jump probably began
 * with a countermovement. Empty cells and zeros are missing.
 * @customfunction ECCENTRICUTILISATION
 * @param countermovementJumps Heights in cm (or powers in W), e.g. C4:C29.
 * @param squatJumps The same of the squat jump in the same unit, e.g. D4:D29.
 * @returns Ratio without unit, e.g. 1.08.
 * @example =TAPELINE.ECCENTRICUTILISATION({33.2;30.4},{30.7;29.9})
 * @source McGuigan et al. 2006, J Strength Cond Res 20:992-995 (from memory).
 */
export function eccentricUtilisation(countermovementJumps: any[][], squatJumps: any[][]): any[][] {
  return cellByCell(
    { "countermovement jump": measured(countermovementJumps), "squat jump": measured(squatJumps) },
    (jump) => part(eccentricUtilisationRatio(jump["countermovement jump"], jump["squat jump"]), ({ ratio }) => ratio),
  );
}
