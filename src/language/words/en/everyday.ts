/** Everyday words one slip away from a word of the trade: never mended. */
export const everyday: ReadonlySet<string> = new Set(
  `bridge fridges polar table tables able cables panes panelled panel settle nettle toasted toasty lighter lighten tight fight might right sight slight flight
  heather heated heaters heats theater waits wants watch walls vaults bolts salts yours tours hourly ours minuted mighty eights knights average averaged
  charged charges change changed changes changer chargers chance dive diving driven drives driver drivers river starters started stared startle weekends
  cooker cooler coolers cooled coolest labels lapels laptops routes routed route touter rooter blend blended bender blenders lender inverts inverted converter
  coffees toffee coffer lambs lamp clamps camps stamps damps ramps tell telly teller tells bells belly jelly teach reach beach peach teacher teaches lesson lessons lessen
  forgets forgot forged forge within withhold private piracy series serious sizes enough rough tough cough driving diving striving hiding riding sliding
  working worming walking talking worrying running ruining raining training gunning coming percent percents present august augusta sunday sundae monday mondays fridays
  batter battered batters battle battles buttery flattery solars dollar collar scholar molar isolated isolate generate generated generated generally general
  quarters quarrel voltages compress compressed television induction reduction production capacity discharge discharged discharges volume values
  blankets banquet metre metres metric meters matters letters betters setters mitres hotter heater beater seater water waiter later hater eater
  flood floods floated parallels controls controlled controllers overcasts nightly nighty weights wait waited white while whole wheel
  second seconds hundred coupled couple couples smaller smallest tallest mallet pallet ballet wallet shower showers tower lower power powers flower
  light lights lightly delight alright relight sights rights fights nights mights houses horse horses honours honour flours hoursr course courses source sources
  chargeable forgets forgetting forgetful watt lithium telling selling yelling falling calling filling feeling dwelling felling
  cabled cabler gable fable stable sable cagle winter sunder amount mounts counts account`
    .split(/\s+/)
    .filter(Boolean),
);
