import { html } from "lit";
import { formula } from "../formula.ts";
import type { HelpPart } from "./part.ts";

export const method: HelpPart = {
  words: html`<h3>What a nut meets</h3>
    <p>
      Let the flanks of the screw have worn back by w₁(s) and w₂(s) at the place s of the screw. A stiff nut that engages a
      length E about x is stopped by the least worn thread in it, on either side. With its clearance c and the end float e,
      the lost motion at x is
    </p>
    ${formula("B ( x ) = c + min_E w_1", "+ min_E w_2 + e")}
    <p>
      c travels with the slide and e is the thrust bearing’s, so both are the same for every x. Over the travel V and the
      working range W, that divides lost motion into
    </p>
    ${formula("uniform = min_V B")} ${formula("uneven = max_W B − min_V B")}
    <p>With the running clearance r left at the tight spot, adjusting can take up</p>
    ${formula("take-up = uniform − e − r")}
    <p>and leaves, with the end float put right to e′,</p>
    ${formula("left ( x ) = B ( x ) − min_V B", "+ r + e′")}
    <p>
      A place s of the screw has worn by no less than the greatest rise above the tight spot of all places where the nut
      reaches it, both flanks together:
    </p>
    ${formula("w_1 ( s ) + w_2 ( s )", "≥ max_|x−s|≤E/2", "( B ( x ) − min_V B )")}

    <h3>From readings to profiles</h3>
    <p>
      The mean of m readings at a station scatters by repeatability σ, by what is particular to the station, τ, and by the
      rounding to graduations of ρ, which repeats share:
    </p>
    ${formula("noise = σ² / m + τ² + ρ² / 12")}
    <p>
      A pair rounds twice. 400 profiles that agree with the readings are drawn from a model of how screws wear: not at all,
      with a chance of 30 in 100 beforehand; a bump, a plateau, a worn end, a taper, a steep side with a long tail, two
      bumps, or free patches. Each is met by the nut as above. The seed is fixed: the same readings give the same verdict.
      Each figure is the median of the draws, with the interval that holds 95 in 100 of them. The difference of the largest
      and the smallest reading is not used: scatter makes it too large, and it sees nothing between stations.
    </p>

    <h3>The rule</h3>
    <p>
      With the limit T, the end float e and what it can be set to, e′, and g = B − e (less drive play in pairs), each draw
      goes through these in order:
    </p>
    <ol class="steps">
      <li>Greatest g and e together within T: leave it alone.</li>
      <li>Greatest g and e′ together within T: correct the end float.</li>
      <li>Greatest g, less the least, with r and e′, above T: remake the screw, with nuts to match.</li>
      <li>The nut can be adjusted, has enough left to take up, and has not worn too thin: adjust the nut.</li>
      <li>Else: fit new nuts.</li>
    </ol>
    <p>
      The share of draws that end at a step is its chance. From 95 in 100 on it is the verdict; below that more is to be
      read, where it tells most. That is the place x at which a reading is expected to lower the variance of the margin M,
      by which the limit is kept or missed, the most:
    </p>
    ${formula("cov ( g ( x ) , M ) ²", "/ ( var g ( x ) + noise )")}

    <h3>Uncertainty, and the limit proven</h3>
    <p>
      Repeatability, rounding, the indicator’s stated error and hysteresis, and what lies between stations add up as squares
      to the combined standard uncertainty u, after the Guide to the expression of uncertainty in measurement.
      In the words of ISO 14253-1, one-sided at 95 %, the limit is proven to be kept, or disproven, where the greatest lost
      motion is off it by more than
    </p>
    ${formula("1.65 u")}
    <p>and not proven between. The expanded uncertainty is</p>
    ${formula("U = 2 u")}
    <p>
      Readings of positions at targets, both ways, are also told in the quantities of ISO 230-2. Readings are corrected for an
      indicator out of line by its cosine, and for dials on diameter by half.
    </p>`,
};
