/**
 * What the words of a danger mean: concept -> its words. "_" joins the words of a phrase, "~" stands for any
 * ending. A word may carry several concepts. Inflections and slips of one letter are found by `concepts.ts`.
 */
export const lexicon = {
  // Where things stand.
  shelter:
    'tent~ tipi yurt annexe annexes annex awning awnings awnin porch vestibule gazebo marquee swag bivvy canopy topper boot trunk locker hatch tarp toilet_tent loo_tent storage_bay rooftop wagon truck_bed under_the_cap inner_tent dome sleeping_area sleeping_compartment cupboard tonneau tray under_the_bed cockpit',
  vehicle:
    'van vans caravan caravans camper campers campervan campervans motorhome motorhomes bus rv trailer bakkie ute cab car truck vehicle hauler cabin wheeler boat bedroom saloon wohnmobil motor_home kombi wagon rig chassis floor',
  inside: 'inside indoors within into in_here in_the in_a in_our in_my in_with intae in_there',
  under: 'under underneath beneath below undernea~ in_under',
  closed:
    'closed close shut zipped zip zips sealed seal enclosed airtight windows_up unvented unventilated no_holes without_any_hole caulked silicone flaps_down walls_down sides_down sides_on walls_on buttoned all_sides every_side no_air draught_proof tight tightly',
  'bit-open':
    'flap flaps tailgate ajar cracked crack skylight vent hatch_up lid_open lid_cracked window_open windows_open door_open open opened roof_vent airy window_down windows_down ventilat~',
  nearby:
    'beside next_to near close_to by_the under_the_window window doorway tent_door tent_flap right_by alongside outside_the_window adjacent metre_from m_from just_outside upwind at_the_door entrance',
  outside: 'outside outdoors downwind paddock upwind open_air away',
  sleep:
    'sleep~ asleep bed beds bunk bunks kip kipping bedtime overnight all_night nap slept snooze berth berths last_night night_long through_the_night night nite tonight',
  warmth: 'warm warmth heat heats toasty cosy cozy warming chilly freezing freeze cold heating worms',
  rain: 'rain~ wet pouring hosing bucketing pissing lashing storm~ drizzl~ snowing puddle puddles mud soaked soggy damp dew downpour ground grass saturated',
  // What burns or runs.
  heater: 'heater heaters heating furnace fire_place radiator warmer',
  'fuel-heater':
    'gas_heater propane_heater gas_fire gas_heating kerosene paraffin log_burner wood_burner wood_stove catalytic heater_with_gas portable_heater cabinet_heater radiant_heater butane_heater gas_lamp lantern_gas lamp_gas gas_mantle alcohol_stove buddy_heater lpg_heater gas_catalytic gas_burner gas_stove_for heater_gas',
  coals: 'bbq barbecue barbeque barbecues barbie braai charcoal coals coal embers grill brazier firepit fire_pit fire_bucket briquettes hibachi campfire hot_ash bucket_of_coals smoker fire_bowl',
  cooker: 'cooker cookers stove stoves oven hob burner burners gas_ring rings camping_stove primus gas_flame flame_on cooking_gas cooktop open_flame naked_flame candle candles tea_lights',
  electric: 'induction electric_heater electric_hob fan_heater blanket electric_blanket 12v_heater oil_radiator no_flame',
  lit: 'lit burning burn burns glowing running run runs going left leave leaving light_it on_low still_on turned_on stays keep chuggin~ hums humming idles idling idle ticking_over',
  exhaust: 'exhaust flue chimney fumes pipe tailpipe exhausts',
  detached: 'dropped fell fallen adrift loose broken off_the_pipe disconnected leaking leak leaks cracked hole rusted',
  engine: 'engine motor idles idling idle car_running engine_running donk motor_running ticking_over',
  generator: 'generator generators genny gennie gennies genset gennys gen_set jenny genie geny',
  // How people feel.
  symptom:
    'headache~ migraine dizzy dizziness woozy whoozy woosy nausea nauseous nauseated queasy drowsy dozy groggy lightheaded light_headed faint fainted fainting vomit~ puking puke crook yawning feel_sick feeling_sick feel_rather_sick and_sick sick_stomachs sick_feeling passed_out unconscious wont_wake cant_wake collapsed confused sore_head head_hurts head_is_pounding head_pounding pounding_head~ thumping_head~ crook_head pain_in_the_head pain_of_head pain_of_the_head mal_at_the_head thumping pounding wanna_chuck sleepy oddly_sleepy feel_funny feeling_funny feel_weird feeling_weird wobbly spinning throwing_up threw_up weak_legs cherry_red fuzzy light_in_the_head palpitations spewing heads_hurt hungover seeing_double rough lethargic cant_think~',
  people: 'we_all all_of_us both we_both missus wife wifey husband kids everyone everybody mate_and_i friend mother father occupants wee_one~ child~ scouts dog cat nan grandad lady',
  co: 'carbon_monoxide monoxide co_alarm co_detector co_sensor co_meter co_monitor co_reading ppm carbon_dioxide_alarm co',
  alarm: 'alarm alarms detector detectors sounder sensor white_box smoke_alarm little_white_box small_white_alarm',
  sounds:
    'going_off went_off goes_off gone_off sounding sound sounded screaming scream screamin screams beeping beep beeps chirping chirp hollering keeps_going shut_up blaring noise shrieking bleeping ringing wailing tripped_off woke chirps squealing',
  silence:
    'silence silenced removed took_out took_its took_it took_the_battery pulled yanked unplugged off_the_wall sock pillows pillow cupboard wrapped smother muffle switch_off switched_off turn_off took_them taped_over disconnect~ mute shut_it_up turned_it_off stuck_it_out taken_it_down hung_it stuffed chucked_it ignore',
  // Batteries in trouble.
  battery: 'battery batteries batt batts batter cell cells powerbank power_bank power_pack accumulator battry powerpack power_station pack',
  lithium: 'lithium lithiums lithum lifepo lifepo4 lfp li lion life_po4 lipo li_ion litium lithionics lith l_f_p life_p_o lifep',
  'lead-acid': 'agm agms gel gels flooded lead wet_cell lead_acid wet_battery calcium a_g_m',
  'wet-lead': 'flooded wet_cell liquid_acid tops_up_with_water wet_battery lead_battery lead_acid unsealed open_cell',
  smoke: 'smoke smoking smokes smoulder~ flames on_fire caught_fire smocking smoke~ alight sparking sparks wisp fumes burning_wire burning_smell smell_burning smouldering vapour smoked_a smoked_up',
  swollen:
    'swollen swelling swelled swell swells puffed puffy bulge~ bulging bloated bloating inflated convex expanded ballooned misshapen swole bowed becomes_thick thick_at_the_sides split_open popped_open',
  hiss: 'hiss hisses hissing whistles whistling sizzl~ crackl~ crackle fizz fizzed fizzing fizzy gurgl~ bubbl~ sssss gassing boiling spitting venting popping_noise~',
  hot: 'hot boiling scalding roasting sizzling burning_hot overheating overheats overheat 71_degrees hotter superhot untouchable unbearable hotter_than temperature_unbearable snatch',
  touch: 'touch hand hands palm fingers finger feel handle hold',
  warm: 'warm toasty warms gets_warm lukewarm warmish',
  melt: 'melt melts melted melting meltin soft squishy deform~ brown crumbly brittle charred scorched singed burnt browned bubbled discoloured discolored blackened melty',
  smell: 'smell smells smelling smelly stink stinks stinking pong pongs ponging reek reeks whiff odour odor stench niff smelt sniff scent',
  'burnt-smell': 'burnt_smell burning_smell smells_burnt smell_of_burning burning_plastic melted_plastic melting_plastic hot_plastic smells_of_burning acrid burnt_plastic electrical_smell fishy',
  eggs: 'eggs egg eggy sulphur sulfur rotten_egg~',
  'gas-word': 'gas lpg propane butane cooking_gas autogas',
  bottle: 'bottle bottles cylinder cylinders regulator hose',
  empty: 'empty out_of_gas run_out ran_out runs_out refill refilled gone_off',
  ignite: 'lighter lighters match matches switch_on switch flick flip turn_on light_the lights_on spark sparks fan_on put_the_fan put_on_the_fan fan torch light_something fire_up whack_the_fan ignite cigarette smoke_a',
  acid: 'acid electrolyte splash splashed splashes spilled spilt spill liquid',
  body: 'eye eyes skin face hands sleeve fingers arm burns_my leg stings',
  caps: 'caps cap opened_the_battery battery_cells cells_to_top lids plugs_off',
  'battery-box': 'battery_box box boxed tub compartment enclosure cupboard bin tool_box',
  'cut-open': 'with_saw a_saw saw_the saw_it sawing sawed hacksaw grinder cut_open cut_it_open cutting_open cut_the_lid cut_the_case cutting_the_case cutting_the_lid pry prying crack_the_case open_up_my open_up_the open_the_box screwed_through screw_through self_tapper tapper screw_straight drill_into drill_a drilled_a drilled_into drilling_a puncture~ nailed nail_through pierce~ stab~ superglued glued crack_open lid_off open_it_up dismantle~ take_it_apart prise prised swap_a_cell replace_a_cell solder soldering took_it_apart opened_up knife the_lid_off with_the_angle open_the_case crack_the',
  case: 'case casing lid cover shell pack',
  bms: 'bms b_m_s protection_board battery_management protection_circuit',
  bypass: 'bypass bypassed bypassing bridge bridged bridging loop looped link linking by_passed override disable defeat defeating jumper_out jumper_wire round_it around_it take_out cut_out_the switch_that_protection off_that_protection turn_off_the_protection without_bms trick fool cheat remove_the_bms jump_out short_out shorting direct_off_the_cells straight_to_the_cells ditch~',
  'short-circuit': 'spanner wrench shifter screwdriver across_the_terminals across_both dead_short bridged_both arc arced short_circuit shorted short_circuited both_poles both_posts bang',
  reuse: 'still_use still_using use_it again back_in_service keep_using still_good another_trip still_ok still_okay normal',
  // Fuses.
  fuse: 'fuse fuses fuze fuzes fused fusing fusible',
  blow: 'blow blows blew blown blowing blowin blowimg pop pops popped popping poppin keeps_going burns burnt burning fuse_went fuse_goes gone_again letting_go letting go_on_me taking_out takes_out trips melted melting carked dies died kept_going kept_dying broken breaks keeps_breaking goes goes_pop fails failed',
  bigger: 'bigger larger fatter stronger higher heavier beefier next_size size_up next_number size_after uprated uprate upsize upsized upped step_up stepping_up more_strong more_big chunkier oversized bump_up up_a_size go_up going_up double_the_size twice_the_size step_it_up biggest next_one_up up_to_a greater increas~ increase raise raising blade_30',
  'put-in': 'put stick stuck whack bung chuck chucked threw throw pop_a fit fitted install shove shoved instead replace replaced substitute take_a swap swapped slap jam jammed toss use_a tried try_a use_that in_there pushed bang_in',
  foil: 'foil foal tinfoil tin_foil alfoil aluminium_paper aluminum_foil bolt nail coin screw paperclip paper_clip gum_wrapper silver_paper copper_wire brass_bolt wrapper bit_of_wire strand hairpin washer spoon staple side_by_side doubled_up solid_link bridged_the_fuse next_to_each_other kitchen_foil',
  'no-fuse':
    'no_fuse no_fuses without_fuse without_a_fuse without_fuses skip_the_fuse skip_fuse skipping_fuses unfused fuse_free not_fused no_inline_fuse nae_fuse fuse_none nothing_between no_protection fuse_omitted fuseless isnt_the_fuse isnt_a_fuse no_main_fuse any_fuse fuse_at_all',
  omit: 'skip skipping leave_out leave_off leave_it_off leave_it_out leaving_out leave_the omit omitted without didnt_bother not_bother dont_bother never_bothered bothered bother do_without did_without who_needs for_people for_folk unfused gone_unfused go_unfused missing no_room away nae none left_off left_out left_it_out fuses_omitted lack',
  direct: 'straight direct directly slap bolted bare wired_directly right_to right_on hard_on',
  post: 'posts terminals terminal post clamp clamps poles pole',
  'short-run': 'short shorter only metre cm centimetres centimeters near thick tiny',
  // Mains.
  mains: 'mains 230v 240v 120v 230_v 240_v 120_v 230_volt 240_volt 120_volt 110v 110_volt hookup hook_up hook shore_power shore grid 230 240 high_voltage household household_power domestic pedestal',
  socket: 'socket sockets outlet outlets powerpoint powerpoints power_point power_points receptacle receptacles gpo wall_socket points pocket skt power_socket wall_outlet',
  inlet: 'inlet inlets entry in_let shore_plug',
  switchboard: 'switchboard breaker_panel breaker_board consumer_unit db_board db breaker breakers rcd rcbo gfci fuse_box 230_box distribution_board board subpanel earth_leakage residual panel_board safety_switch trip_switch',
  'wire-up': 'wire wired wiring wires rewire hardwire hardwired hard_wired hard_wire install installing installed fit fitting adding add putting put_in build_in hook_up_the connect connected terminations chase chasing self_install wire_in run_the_230 cable_size electrics wire_gauge pittin connecting',
  myself: 'myself meself masel my_own own_my my_self me_self diy ourselves himself herself yourself on_my_own own_work self_install self_installed my_elf by_my by_ourselves own_self me_own im_doing doing_it no_electrician off_a_video from_a_video a_clip themselves watched_a_video youtube plumber unlicensed no_licence licence sen_himself not_an_electrician sparky_wants sparkies_cost electrician_wants',
  electrician: 'electrician electricians sparky sparkie sparkies licensed qualified',
  'did-it': 'licensed_electrician electrician_came by_an_electrician by_the_electrician sparky_did the_sparky_put sparky_fitted electrician_did electrician_fitted electrician_installed electrician_is electrician_will had_it_wired certified',
  'which-wire': 'which_wire which_wires where_goes which_screw which_terminal brown blue_green brown_blue neutral live_and earth_thing which_one_goes green_yellow in_which_hole where_i_connect',
  tingle: 'tingle tingles tingling tingly shock shocks zap zaps zapped zapping electric_shock buzz_off tickle bite',
  'both-ends':
    'both_ends both_sides two_ends each_end double_ended double_male double_headed male_to_male plug_to_plug double_plug both_the_sides both_the_ends either_end baith_ends suicide widowmaker widow_maker male_male every_end plug_pins_at_both one_end_plug double_ender',
  plug: 'plug plugs plugged plugging male male_plug pin pins prong prongs',
  cord: 'lead leads cord cords extension extensions cable cables flex reel',
  'earth-pin': 'earth_pin ground_pin third_pin third_one third_prong pin_of_earth earth_prong ground_prong earth earthed ground pin_off that_pin',
  'cut-off': 'snipped sawed sawn filed file cut cut_off broke broken snapped hacksawed removed snap break bent off pulled_out ground_off nipped',
  tape: 'tape taped bag bags carrier gaffer elastic twisted spliced wrapped splice cling_film sandwich_bag',
  join: 'join joined joint joins meet connection coupling joining chained chain coupler splice',
  coiled: 'coiled coil wound wound_up rolled_up unrolled unwound unwind left_rolled on_the_drum drum untangl~ still_on_the_reel',
  'plug-change': '15_amp 15a 16_amp 16a_plug 10_amp_extension amp_plug adaptor adapter snip different_plug fit_a_15 round_pin plug_on_the_10 bigger_plug 32a_plug thin_extension garden_extension household_extension orange_lead cheap_extension lawnmower_lead',
  house: 'house cottage home kitchen shed hut homes flat apartment granny grid bungalow wall',
  feed: 'feed feeds feeding fed backfeed back_feed backfeeding push pushes pushing shove shoves shoving energise~ energize~ liven livens power powering supply supplies plug plugged plugs plugging',
  'power-cut': 'power_cut power_cuts power_is_out power_out powers_out blackout blackouts outage power_failure grid_is_down grids_down grid_down storm storms black_out lights_out lost_power',
  'all-live': 'all_live whole_house all_the_house whole_cottage whole_van every_socket all_sockets all_the_sockets alle_sockets all_of_the_sockets sockets_work plugs_work lights_work points_live come_alive power_points_live all_the_plugs all_the_lights lit_up rest_of_the every_outlet every_receptacle remaining_outlets own_sockets',
  changeover: 'changeover change_over transfer_switch interlock selector isolate',
  'both-on': 'together both same_sockets same_ring ring share shares permanently_joined same_time at_once same_circuit simultaneously parallel_with_hook',
  // Currents and limits.
  limit: 'limit limits limited max maximum allows allow allowed tops_out good_for cutoff cuts_at nae_mair no_more_than makers_limit maker_says continuous continuously lets_out let_out lets_only up_to',
  overload: 'overload overloaded overloading too_much exceed exceeds exceeding above_its over_the_limit over_its past_its more_than_the over_limit',
  'big-load': 'kettle hob toaster coffee heater microwave induction blender dryer aircon jug pan cooker hairdryer iron heat_gun grill airfryer air_fryer espresso',
  inverter: 'inverter inverters invertor inverted inventor',
  ciggy: 'cigarette_lighter cigarette_socket cigar_lighter cigar_socket cig_lighter cig_socket cig_sockets ciggy ciggie lighter_socket lighter_plug lighter_rocket cigarette_plug accessory_socket 12v_socket 12_volt_socket socket_of_cigarette aux_socket dash_socket lighter_adapter lighter_lead cigarette_lighter_plug cigar_lighter_socket',
  'small-plug': 'trailer_plug 7_pin seven_pin seven_pole 13_pin trailer_connector usb_plug',
  thin: 'thin speaker_wire bell_wire lamp_flex skinny doorbell_wire speaker_cable telephone_wire titchy',
  'wire-word': 'wire cable cables wires conductor insulation flex lead leads gauge awg',
  alternator: 'alternator alternators altenator',
  isolator: 'isolator vsr split_charge relay solenoid',
  dcdc: 'dcdc dc_dc dc_to_dc b2b booster charger_between',
  safe: 'safe ok okay alright fine allowed permitted any_harm acceptable permissible',
  // Cold.
  frost: 'frost frosty frozen froze iced icy snow snowed snowy snowing sub_zero subzero below_zero below_freezing under_zero brass_monkeys minus_degrees hoar blizzard freezing_point ski_field arctic low_temp low_temperature freezes frosts igloo ice_on ice_inside solid_ice ice_in_the icicles ice_this hear_ice full_of_ice',
  'cold-word': 'cold freezing chilly winter cauld nippy bitter zero snow_season wintry',
  charge: 'charge charging charges charger chargin chargers recharge recharging fill filling topped topping top_up charging_current full',
  source: 'solar panel panels dcdc dc_dc alternator drive driving mains_charger hookup sun',
  // Joining batteries.
  parallel: 'parallel parallelled paralleled paralleling paralel parallell parralel parrallel in_parallel plus_to_plus same_posts link_them alongside side_by_side linked joined_to',
  'join-batteries': 'join joined joining link linked linking couple coupled hook hooked mix mixed mixing combine combined together next_to add alongside across_the_terminals bank beside side_by_side clamped bridged boosting boost strap strapped',
  old: 'old older auld aged aging ageing tired existing worn oldie years_old yr_old yo year_old yrs_old used second_hand elderly',
  new: 'new brand_new fresh newer spare young replacement',
  'one-of-them': 'one_of_them one_of_the one_from_them one_from one_of_em one_of ones_a ones_new one_is one_new',
  // Starting.
  jump: 'jump jumped jumping jimp jumpstart jumpstarting jump_start jump_started jumper_leads jumper_cables jump_leads jumper jump_cables booster_cables start_help a_jump slave_start bump_start starting_cables boost give_start jump_pack jump_lead give_a_start a_start start_other start_people jump_it jump_her jump_him',
  clamps: 'clamp clamps croc_clips crocodile_clips clips red_first black_first red_or black_or which_clamp hook_em hooking leads cables red_lead black_lead',
  'no-start': 'wont_start wont_crank will_not_start doesnt_start does_not_start does_not_crank not_start not_crank wont_turn not_starts no_crank cranker_dead cranker_is_dead dead deid click clicks clicking clic licks wont_fire nothing_happens still_wont immobilised stranded battery_is_empty battery_empty cactus conked stsrt out_of_battery dead_battery flattened drained unstartable not_starting',
  car: 'car cars ute truck bakkie van engine motor tractor vehicle lorry outboard donk boat bike motorbike bakkies utes motors scooter quad camper',
  starter:
    'starter starters cranker cranking_battery crankin_battery start_battery crank_battery engine_battery ignition_battery car_battery vehicle_battery motor_battery battery_of_the_motor battery_of_the_engine starting_battery main_car_battery only_battery start_batt car_only_battery battery_under_the_bonnet key_on key_turned ignition_on auto_battery bonnet_battery under_bonnet',
  'will-start': 'start starts crank cranks cranking fire_up fires_up fired_up still_start start_after drive_off get_away turn_over cranked get_going turns_over turned_over get_home',
  reserve: 'reserve afterwards still_start tomorrow in_the_morning after_that morning dawn',
  remote: 'alone solo no_signal no_reception nobody no_one remote km_from kilometres_from middle_of_nowhere no_comms far_from desert miles out_bush outback no_network',
  slow: 'slow slowly sluggish slower lazy struggl~ labour~ barely groan~',
  'all-night': 'all_night overnight all_weekend all_evening whole_weekend whole_night all_the_night all_nite all_knight days weekend the_night 2_days two_days',
  always: 'always every_trip every_time for_years never_failed all_weekend',
  // Health.
  medical:
    'cpap bipap apap c_pap cpaps apnoea apnea oxygen concentrator concentrators insulin nebuliser nebulizer nebulisers ventilator breathing_machine sleep_machine snore_mask dialysis feeding_pump suction_machine medication medicine medicines vaccines humidifier vpap heart_monitor breathing_aid breathing_device breather oxygen_machine o2 airway tpn peg_feed infusion syringe_driver biologic epipen medical medically snoring_machine apnoea_mask asthma pap_machine defibrillator mask_he_sleeps mask_she_sleeps sleep_apnoea_mask sleeping_mask_machine',
  'not-here': 'at_home stays_home remains not_coming left_behind for_good mask_is_fine masks_fine no_longer given_up sold stopped_using back_home staying_home home_this_time no_mate off_the_sleep',
  // Words that take a danger away.
  price: 'budget price prices dollars bucks wallet bank_account cost',
  weather: 'river creek road dam ankle eyes river stream flood tide lake',
  same: 'same same_again same_size like_for_like another equal identical new_one',
  which: 'which_fuse what_fuse what_size which_size which_fuses',
  'charger-thing': 'charger chargers fridge plug controller regulator isolator dcdc busbar holder',
  leak: 'leak leaks leaking leaky hissing escaping loose',
  'cut-out': 'took_the cut_out removed crimped bridged_out joined_the_two twisted',
  'add-one': 'adding add one_more put_in install fit',
  holder: 'holder holders terminal',
  flames: 'flames flame',
  solar: 'panel panels pv mppt pwm solar string',
  'flued-heater': 'diesel_heater parking_heater petrol_heater diesel_heating chinese_diesel night_heater air_heater',
  'flat': 'flat flattened flattens drained dead_flat',
  'bed': 'bed beds bunk bunks berth berths mattress under_us sleeping_on on_top cot',
  'need-it': 'do_i_need do_i_really do_i_honestly do_i_rlly do_i_even do_we_need really_need must_i need_a_fuse needs_a_fuse need_fuse is_it_needed need_one really_necessary necessary_fuse required genuinely_required no_need dont_need worth_it really_a_fuse rlly_need do_i_realy',
  'which-cable': 'what_cable',
  'switch-to': 'jump_to make_the_jump the_jump_from before_i_jump jumping_castle castle jump_in quick_jump',
  'plea': 'just surely tho though even only come_on anyway cant_i simply what_could_happen what_if still promise quick',
  'claims': 'says say said reckons tom wanda',
  'each': 'each apiece both_have per_battery',
  'agm': 'agm agms a_g_m',
  'gel': 'gel gels',
  'flooded': 'flooded wet_cell',
  'fat': 'fat puff split pillow balloon burst tummy pregnant gone_round domed cushion grown stretched bigger_than',
  'unbearable': 'unbearable untouchable too_hot_to cant_touch cannot_touch can_not_touch cant_keep cannot_hold cant_hold',
  'broken-cell': 'dead_cell cell_broken bad_cell cell_in_my cells_cactus cell_has_failed',
  'cell-word': 'cell cells',
} satisfies Readonly<Record<string, string>>;

/** The words before a thing that say there is none of it. */
export const denials: ReadonlySet<string> = new Set('no not without never nae isnt arent dont doesnt didnt havent hasnt aint nor neither'.split(' '));

/** Concepts that a denial just before them takes away. */
export const deniable: ReadonlySet<string> = new Set(['symptom', 'medical', 'smoke', 'smell', 'coals', 'cooker', 'exhaust', 'swollen', 'hot', 'hiss', 'sounds', 'fuel-heater', 'heater', 'generator', 'lithium']);

/** Words of every day that are no slip of a word above, however near they are. */
export const ordinary: ReadonlySet<string> = new Set(
  'action adder alarming average baggage baking banging bathing batty beach beading bearing beating bedding belting bench better binding bitter bladder blazing blunder boarding boasted booking bounding bowling brained branch breams breathe bringing brother bubble budge bugger building bumping bundle burgers busted butler butter cabbage cables camped camping candle capping caring carried carries catch causing change changed changer changes changing charming chasing checked cheese chill chilli chips choose chopping church cleaner clearer clearing clever clipping closely closer closet closing clothes cloud clouds cloudy coasted coldest coober cooking cooled cooler coolers cottage cottages couch cougar couple courage cracker cramping crease creeping crowd damage damping dating defect dental dimple diving dollar double drained drawing dripping dumping dusted easing eating eighty erasing fables faking farming faster father fearing feeding felting fiddle fifty fighter finder finding fitting flame flares flatter flipping folding forage forming forty fraction freezer freezers friction fried frosted function gables ganging garage garlic gasping gather gearing getting goose grained grease grinding gripping growing halting handle hanging hardware hatch heading hearing heather heavier heavily higher hitting hoarding holding honest hooking hoping hopping hosted hottest humping hunting increase inventory jingle junction jungle keeping ladder landing lapping large lasted lasting latch latest latter launch launched leading leased leasing leather lending letter letters lighter litter lives loading looking looped loose loosing losing lowest luggage lumping lunch making manage mapping march massage match matter medals meeting melting mental message metals middle minding moaning models modest molest moose moulding mourning napping nation nearing nested ninety nipper oldest option options package packet packing paddler painting panels parent parking passage pasted patch patient paying pedals peeping pelting people perce petals picking pints pitch planting plating please plenty porch postage posted printing propped puddle pumping rained raised raising raking rally rather rating ration rations reach reading release remain rental renting require requires rested retire riddle ringing rising roasted rounding rudder ruining sadder saddle saddler salting sample sanding sausage saying scaring scoring scout seating section sending setting seventy sewing shades shaking sharing sheeting shipping shoeing shoes shooting shopping shoring shouted shouts shower shudder signed simple singing single sings sipping sitting sixty skating slating sleeping slice slinging slipped slipping smiled smiling snaring snoring sorted sorting sounding sparing spelling spending sprained spring springs sprung stable stacking stained staking stamping stand standing staring stars starting state states stating station stations stayed stepping sticking stickler sting stirring stocking stones stopping storage storing storming strained string strings strong strung sugar swamping swarming sweeping table tables taking taper tapping tasted teach tearing teasing temple tested thirsty thirty thunder tighter tingle tipping toast toasted toddler torch touch tracking traction trailer trailers trained tramping trawler trouble trucking trusted twenty under unused update upside vested vinegar waiting waking wander warning washed wasted watch wearing weather wedding weeping welding whether whipping winding winner wonder zapping'.split(' '),
);
