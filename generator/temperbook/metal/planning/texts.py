"""The sentences of a plan: notes, warnings and refusals by id. `{x:.1f}` is filled with a number.

The browser fills the same templates, so that only the forms {x}, {x:.Nf} and {x:g} are used.
"""

from __future__ import annotations

IMPOSSIBLE = {
    "end-larger": "The end, {end}, is larger than the start, {start}: work takes away. Start from a larger section, or melt and cast again.",
    "end-thicker": "The end, {end}, is thicker than the start, {start}. Start from thicker stock.",
    "cut-to-width": "Nothing is rolled here: cut the strip to {width:g} mm.",
    "end-too-wide": "Rolled flat, {start} spreads to about {reached:.1f} mm, not to {width:g} mm. Start wider, or forge it across first and say --process forge.",
    "strip-first": "A flat does not go straight to {end}: cut a strip as wide as it is thick, and plan from square {thickness:g}.",
    "process-shape": "The process {process} does not end at {end}; leave the process out, or choose another.",
    "unknown-start": "The start is cast or annealed, not {state}.",
    "fewer-anneals": "The plan has the fewest anneals already; only more can be asked for.",
    "nothing-to-do": "Start and end are the same, {end}: there is nothing to work.",
    "needs-no-anneal": "{alloy} needs no anneal between the work, so there is nothing to divide.",
    "not-worked-cold": "{alloy} is not worked cold; it is used as cast, or worked hot as its page says.",
    "not-melted": "{alloy} is not melted at a bench ({melt}): buy the stock, and plan with --start annealed.",
    "unknown-temper": "`{temper}` is no temper; one of: {words}; or a hardness such as 100HV.",
    "no-temper-table": "No published table says which reduction gives {alloy} a temper as {form}. Say the last reduction yourself: --last PERCENT of the area.",
    "temper-not-in-table": "The published table of {alloy} as {form} has no {temper}; it has {known}.",
    "no-hardness-table": "No published table gives {alloy}'s hardness in {unit} by reduction as {form}. Say the last reduction yourself: --last PERCENT of the area.",
    "hardness-not-in-table": "The table of {alloy} as {form} goes from about {soft:.0f} to {hard:.0f} {unit}; {hardness:g} lies outside it, and it is not drawn out.",
    "temper-basis-not-stated": "The reduction that makes {alloy} {temper} is published without its basis; on wire that leaves it open. Say the last reduction yourself: --last PERCENT of the area.",
    "last-over-ceiling": "The last run would take {last:.0f} % of the area, but no more than {ceiling:.0f} % is allowed between anneals. Ask for a softer temper or a smaller last reduction.",
    "too-thin-for-temper": "From start to end there is only {there:.0f} % to take, and the last run alone needs {last:.0f} %. Start from {start} or more.",
    "temper-from-cast": "From cast metal a temper is not known: it is claimed only after an anneal. Start thicker than {start}, or from annealed stock.",
    "no-such-hole": "The plate has no hole of {size:g} mm; the nearest is {nearest:g} mm.",
    "gap-in-plate": "Between {large:g} mm and {small:g} mm the plate leaves a gap of {taken:.0f} % of the area, more than the {most:.0f} % of one draw. Add a hole between them, or allow more with --per-pass.",
    "holes-under-ceiling": "No choice of these holes keeps every run within its ceiling; the plate needs holes closer together.",
    "too-many-passes": "A run would take more than 400 passes; look at --per-pass, --roll-diameter and --friction.",
    "temper-or-last": "Ask for a temper or for a last reduction, not both.",
    "mass-or-length": "Give the length or the mass, not both.",
    "no-such-option": "With {anneals:g} anneals this end can't be reached as asked; it needs at least {least:g}.",
    "no-density": "{alloy} has no density, published or by mixing; give the mass instead of the length.",
}

WARNINGS = {
    "no-limit": "No limit between anneals is published for {alloy}. The plan takes the bench's common {percent:g} %: look at the metal, and stop at the first sign of a crack.",
    "limit-of-other-working": "No limit is published for this working. The plan takes the {percent:g} % published for another.",
    "no-cast-limit": "No limit from the cast state is published for {alloy}; the one after an anneal is taken. A casting stands less: begin with light passes and look at the edges.",
    "cast-limit-of-other-working": "No limit from the cast state is published for this working. The plan takes the {percent:g} % published for another.",
    "under-floor": "Run {run:g} takes {percent:.0f} % of the area before its anneal, less than the {floor:.0f} % asked for: the grain may grow coarse.",
    "floor-over-ceiling": "At least {floor:.0f} % of the area is asked for before an anneal, and no more than {ceiling:.0f} % is allowed: no plan keeps both. The ceiling is kept.",
    "nearest-sizes": "Both limits would be kept from {start} to this end, or from this start to {end}.",
    "no-reserve": "Run {run:g} ends at its ceiling, {percent:.1f} % of the area, without reserve. Anneal a little earlier if anything looks wrong.",
    "little-work": "Run {run:g} takes only {percent:.0f} % of the area before an anneal. Below about {critical:g} % an anneal makes the grain coarse: work further first, or leave this anneal out.",
    "fine-wire-anneal": "The anneal after run {run:g} falls at {diameter:.2f} mm. Wire below {thick:g} mm is easily overheated and pulls apart after it: anneal thicker if the limit allows.",
    "last-from-cast": "What the metal is like after this run is not known, since it starts from the cast state.",
    "past-ceiling": "It has taken {percent:.0f} % of the area, past the {ceiling:.0f} % that is allowed: anneal now, and look for cracks first.",
    "no-anneal-published": "No anneal is published for {alloy}.",
}

NOTES = {
    "later-limit-is-practice": "The {percent:g} % between anneals is common practice; no source was found.",
    "first-limit-is-practice": "The {percent:g} % of the first run is common practice; no source was found.",
    "later-basis-not-stated": "The {percent:g} % between anneals is given without its basis; it is read as {area:.0f} % of the area, which allows least work.",
    "first-basis-not-stated": "The {percent:g} % of the first run is given without its basis; it is read as {area:.0f} % of the area, which allows least work.",
    "width-constant": "The width is taken as constant, {width:g} mm. A narrow bar spreads: measure it.",
    "width-estimated": "Left free, the bar would spread to about {width:.1f} mm on rolls of {roll:g} mm (estimate by Wusatowski's formula, made for hot steel between flat rolls): measure it.",
    "middle-behind": "In {passes:g} of the passes, down to {thickness:.2f} mm, the rolls work the skin more than the middle (a published criterion for rolling): the ends may split. Where the mill allows it take fewer and firmer passes, or forge the bar first; crop an end that opens.",
    "light-draws": "The lightest draw has a delta of {delta:.1f} at a half-angle of {angle:g} degrees; above {limit:g} (from memory, unverified) the middle of the wire may tear. Take firmer draws.",
    "width-to-trim": "That is wider than the {end:g} mm asked for: trim the edges, or begin narrower.",
    "narrower-by-work": "The end is narrower than the start, and making it so is counted as work. If you cut it narrower, plan from {cut}.",
    "bite-sets-passes": "The rolls of {roll:g} mm bite no more in the first passes: they are lighter than the limit of a pass.",
    "square-to-round": "The corners of the square come off at the first holes: break them with the hammer or in grooves before. The work is counted by area.",
    "forging-has-no-passes": "Forging is counted by the section alone. Turned blows add up, they never cancel; light blows leave the middle of a thick piece unworked.",
    "temper-from-table": "The last run is the one that the alloy's table gives for {temper}: {low:g} to {high:g} % ({of}).",
    "soft-end": "An anneal closes the plan, and the stock is soft.",
    "more-anneals": "With {more:g} more than needed the last run is {percent:.0f} % of the area: a softer end, and smaller runs before each anneal.",
    "mass-from-density": "The mass follows from a density of {density:.2f} g/cm3 ({how}).",
    "charge-settings": "The charge allows for {trim:g} % trimmed, {crop:g} % cropped, {scalp:g} % scalped and {loss:g} % lost in melting: settings of the workshop, common practice and no source. Weigh your own.",
}

HARDNESS_WHY = {
    "from-cast": "From cast metal the hardness is not known.",
    "beyond-table": "The alloy's table ends before this reduction; it is not drawn out.",
    "no-table": "No published table gives this alloy's hardness by reduction for this form.",
}
