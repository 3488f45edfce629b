/**
 * What the words of a danger mean: concept -> its words. "_" joins the words of a phrase, "~" stands for any
 * ending. A word may carry several concepts. Inflections and slips of one letter are found by `concepts.ts`.
 */
export const lexicon = {
  // Where things stand.
  shelter:
    'annex annexe annexes awnin awning awnings bell_tent bivvy boot bunkhouse cabin canopy cockpit cuddy cupboard dome dome_tent entry_of_tent garage gazebo hammock hatch hut inner_tent lean_to little_porch lobby locker loo_tent marquee outhouse pop_up porch roof_tent rooftop shed sleeping_area sleeping_compartment storage_bay swag tarp teepee tent_entrance tent_porch tent~ tipi toilet_tent tonneau topper trailer_tent tray truck_bed trunk under_the_bed under_the_cap vestibule vestibules wagon yurt',
  vehicle:
    'bakkie bedroom boat bus cab cabin camper campers campervan campervans car caravan caravans chassis floor hauler kombi motor_home motorhome motorhomes rig rv saloon trailer truck ute van vans vehicle wagon wheeler wohnmobil',
  inside: 'in_a in_here in_my in_our in_the in_there in_with indoors inside intae into within',
  under: 'below beneath in_under under underneath undernea~',
  closed:
    'airtight all_is_closed all_shut all_sides block_the blocked blocked_the blocked_up blocking buttoned caulked close close_the closed closed_all closed_vehicle cover_the_vents covered_the_vent curtains door_closed door_is_closed doors_closed draught draught_proof draughts draughty drawn_the_curtains enclosed every_gap every_side everything_closed everything_is_shut everything_shut fermé flaps_down foam gaps hermetic~ lid_on_tight lid_taped no_air no_holes no_opening no_vent no_ventilation no_vents plugged_the seal sealed sealed_every sealed_up shut sides_down sides_on silicone stuffed taped_shut tight tight_as tightly unvented unventilated vents_are vents_closed vents_shut walls_down walls_on window_closed windows_are_shut windows_up with_door_closed with_foam without_a_vent without_any_hole zip zipped zips',
  'bit-open':
    'airy ajar bit_open crack cracked door_ajar door_open flap flaps half_open hatch_up lid_cracked lid_open little_open open opened roof_vent skylight slightly_open tailgate vent ventilat~ window_down window_open windows_down windows_open',
  nearby:
    '1_m adjacent alongside at_the_door beside by_the close_by close_to doorway entrance feet_away just_outside m_from meter_away metre_away metre_from near next_to outside_the_window right_by right_next tent_door tent_flap under_the_window upwind window',
  outside: 'away downwind open_air outdoors outside paddock upwind',
  sleep:
    'all_night asleep bed beds bedtime berth berths bunk bunks kip kipping last_night nap night night_long nite overnight sleep~ slept snooze through_the_night tonight',
  warmth:
    'bitter chill chilly cold cosier cosy cozy dry_clothes dry_the drying_clothes for_heat_in freeze freezes freezing heat heating heats hot_inside keep_warm make_warm nobody_freezes stay_warm take_the_chill toasty warm warm_up warming warmth worms',
  rain: 'bucketing damp dew downpour drizzl~ grass ground hosing lashing mud pissing pouring puddle puddles rain~ saturated snowing soaked soggy storm~ wet',
  // What burns or runs.
  heater: 'fire_place furnace heater heaters heating radiator warmer',
  'fuel-heater':
    'alcohol_stove benzine_stove both_flames buddy_heater burners_on butane_heater butane_stove cabinet_heater camp_stove camping_stove catalytic chafing gas_bottle_heater gas_burner gas_burners gas_catalytic gas_cooker gas_fire gas_fires gas_fridge gas_grill gas_heater gas_heating gas_hob gas_lamp gas_lantern gas_mantle gas_oven gas_radiator gas_stove_for gas_thing heater_gas heater_on_the_bottle heater_with_gas hob_lit hob_on jet_stove kerosene kerosene_heater lamp_gas lantern_gas log_burner lpg_heater meths mushroom_heater open_flame_stove oven_door oven_on paraffin paraffin_stove patio_heater petrol_camp petrol_stove portable_heater potbelly propane_burner propane_heater propane_stove propane_thing radiant_heater spirit_burner spirit_stove stove_heater trangia turkey_fryer two_burners white_gas wood_burner wood_fire wood_stove woodstove',
  coals:
    'ashes barbecue barbecues barbeque barbie barby bbq bonfire braai brazier briquettes bucket_of_coals campfire charcoal coal coals embers fire_bowl fire_box fire_bucket fire_in_the fire_pit firepit grill hibachi hot_ash hot_rocks hot_stones log_fire smoker smudge stove_ash',
  cooker:
    'burner burners camping_stove candle candle_heater candles cooker cookers cooking_gas cooktop flame_on flowerpot gas_fire gas_flame gas_jet gas_ring hob jets naked_flame open_flame oven primus ring rings stove stoves tea_lights tealight',
  electric:
    '12v_heater blanket electric_blanket electric_heater electric_hob fan_heater induction no_flame oil_radiator',
  lit: 'been_on burn burning burns burnt_all chuggin~ fired_up glowing going going_since has_been_on heater_on humming hums idle idles idling leave leaving left light_it lit on_all on_low on_since run running runs stays still_on switched_on ticking_over turned_on was_on',
  exhaust: 'chimney exhaust exhausts flue fumes pipe tailpipe',
  detached:
    'adrift broken cracked disconnected dropped fallen fell hole leak leaking leaks loose off_the_pipe rusted',
  engine: 'car_running donk engine engine_running idle idles idling motor motor_running ticking_over',
  generator:
    'gen gen_set generator generators genie gennie gennies genny gennys gens genset geny honda_gen inverter_generator jenny petrol_gen suitcase_generator',
  // How people feel.
  symptom:
    'aching_head aching_heads and_sick barf barfing been_sick being_sick bit_off blacked_out blackout_on_the_floor bleary blue_lips brain_fog breathless burning_eyes can_not_wake cant_breathe_properly cant_stay_awake cant_think~ cant_wake cephalalgia cherry_cheeks cherry_red chest_feels chest_is_tight collapsed confused cotton_wool coughing crook crook_head dazed difficult_to_wake disoriented disorient~ dizzied dizziness dizzy dopey dozy drowsy drunk_feeling dull ears_ringing eyes_sting faint fainted fainting falling_asleep fatigued feel_a_bit_off feel_awful feel_bad feel_funny feel_ill feel_odd feel_off feel_rather_sick feel_rotten feel_sick feel_strange feel_terrible feel_unwell feel_weird feeling_bad feeling_funny feeling_off feeling_sick feeling_strange feeling_unwell feeling_weird feels_ill feels_sick fell_over foggy fuzzy giddy groggy hard_to_wake head_aches head_hurts head_is_heavy head_is_killing head_is_pounding head_is_spinning head_is_splitting head_like_a head_pounding head_spinning head_splitting head_that_turns head_turns headache~ headed heads_are heads_hurt heads_like_a heads_pounding heart_racing heavy_head heavy_heads heid hungover hurl ill_feeling impaired incoherent is_sick keeled_over keep_yawning killing_headache knackered_and knocked_out kopfschmerz legs_like_jelly legs_wobbly lethargic lethargy light_headed light_in_the_head lightheaded limp lips_blue loss_of_consciousness mal_at_the_head mal_de malaise mareo migraine my_head_is nausea nauseated nauseous nodding_off not_feeling_well not_right not_waking oddly_sleepy off_colour pain_in_the_head pain_of_head pain_of_the_head palpitations passed_out pink_cheeks poorly pounding_head~ puke puking queasiness queasy red_cheeks rosy rotten_head rough_head sair_heid seeing_double short_of_breath sick_feeling sick_stomachs sickness sleepier sleepy sleepy_and sluggish_and slurring sore_head sore_heads spewing spinning splitting_heads splitting_head~ stagger~ stinging_eyes stomach_ache strangely_tired swaying swimmy syncope threw_up throwing_up thumping thumping_head~ tight_chest tight_head tired_and tiredness turns_my_head unconscious unresponsive unwell upchuck vertigo very_tired vomit~ wanna_chuck watery_eyes weak_legs weakness weird_feeling wheez~ whoozy wont_feed wont_get_up wont_wake woolly woolly_headed woosy woozy yawning zonked',
  people:
    'all_of_us both cat child~ dog everybody everyone father friend grandad husband kids lady mate_and_i missus mother nan occupants scouts we_all we_both wee_one~ wife wifey',
  co: 'carbon_dioxide_alarm carbon_monoxide co co_alarm co_detector co_gas co_meter co_monitor co_reader co_reading co_sensor co_thing detector_says monoxide ppm',
  alarm:
    'alarm alarm_box alarms alarum beeper beeping_box beeping_thing beepy bleeper bleepy bleepy_box buzzer detector detector_for_gas detectors flashing_box little_white_box monitor_for_gas monoxide_detector sirens small_white_alarm smoke_alarm sniffer sounder warner warning_thing wee_alarm white_box',
  sounds:
    'alarms_all bawling beep beeped beeping beeps blaring bleeping bleeps chirp chirped chirping chirping_every chirps chirruping cries crying flashes flashing goes_mental goes_off goes_on going_crazy going_off gone_mad gone_off hollering honking howling keeps_going keeps_on mental noise pinging pips red_light ringing says_70 scream screamin screaming screams shrieking shut_up sings sound sounded sounding squealing the_whole_night tripped_off tweeting wailing went_crazy went_mental went_off woke wont_stop',
  silence:
    'batteries_oot batteries_out chucked_it cupboard disable disabled disconnect~ hung_it i_have_put ignore ignored ignoring in_a_drawer in_the_car in_the_fridge moved_it_outside muffle mute off_the_wall out_of_the_window pillow pillows press_the_button pressed_the_button pulled pulled_its put_it_in put_it_outside removed removed_the_battery ripped shut_it_up silence silenced smashed smother sock stuck_it_out stuffed switch_off switched_it_off switched_off taken_it_down taped_over took_it took_it_outside took_its took_out took_out_the_batteries took_the_batteries took_the_battery took_the_cell took_them tossed turn_off turned_it_off under_a_towel unplugged wrapped yanked',
  // Batteries in trouble.
  battery:
    'accumulator batt batter batteries battery battry batts cell cells pack power_bank power_pack power_station powerbank powerpack',
  lithium:
    'l_f_p lfp li li_ion life_p_o life_po4 lifep lifepo lifepo4 lion lipo lith lithionics lithium lithiums lithum litium',
  'lead-acid': 'a_g_m agm agms calcium flooded gel gels lead lead_acid wet_battery wet_cell',
  'wet-lead':
    'bubbles_in_the flooded flooded_batteries flooded_battery lead_acid lead_battery liquid_acid open_cell tops_up_with_water unsealed wet_batteries wet_battery wet_cell wet_cells wet_lead',
  smoke:
    'alight arcing battery_fire burning_smell burning_up burning_wire burnt_out burst_into caught_fire emanating fire_in fire_on_the flame_from flames fuming glowing glowing_red goes_out_smoke on_fire red_hot rising_from small_fire smell_burning smocking smoke smoked_a_bit smoked_out smokes smokey smoking smoldering smoulder smouldering smoulders sparked sparking sparks started_a_fire vapour wisp wisp_of',
  swollen:
    'ballooned ballooning become_fat become_round become_thick becomes_thick big_lunch bloated bloating bloats blown_out blown_up blown_up_like bowed bowing buckled bulges bulge~ bulging convex deformation deformed deforming expanded expanding gone_fat grown_a grown_fat inflated misshapen popped_open pregnant puffed puffier puffing puffy rounded rounded_out split_open swell swell_up swelled swelling swells swole swollen thick_at_the_sides thickened',
  hiss: 'boiling bubbl~ crackle crackl~ fizz fizzed fizzing fizzy gassing gurgl~ hiss hisses hissing popping_noise~ sizzl~ spitting sssss venting whistles whistling bacon_frying frying like_bacon vents_gas vents audibly',
  hot: '71_degrees becomes_hot becomes_very burning_hot gets_hot gets_so heats_up hot hotter hotter_than how_hot overheat overheating overheats overheat~ piping pretty_hot quite_hot rather_hot real_hot roasting scalding sizzling snatch so_hot so_warm superhot temperature_unbearable that_hot too_warm unbearable untouchable very_warm',
  touch: 'feel finger fingers hand handle hands hold palm touch',
  warm: 'gets_warm lukewarm toasty warm warmish warms',
  melt: 'blackened blistered brittle browned bubbled burnt charred crumbly deform~ discolored discoloured fused_together gone_brown gone_soft melt melted melted_insulation meltin melting melting_insulation melts melty scorch_marks scorched singed smoking soft squishy toasted turned_brown',
  smell:
    'fumes gassy niff niffs odor odour pong ponging pongs reek reeks scent smell smellin smelling smells smelly smelt sniff stench stink stinking stinks whiff whiffy',
  'burnt-smell':
    'acetone acrid bad_smell burn_smell burned_smell burning_hair burning_odour burning_plastic burning_rubber burning_smell burnt_odour burnt_plastic burnt_smell chemical_smell electrical_smell fishy fishy_smell funny_smell hot_iron hot_plastic hot_smell melted_plastic melting_plastic nail_polish pear_drops singed_smell smell_like_burning smell_of_burned smell_of_burning smell_of_burnt smell_of_fish smell_of_plastic smell_of_rubber smells_bad smells_burnt smells_funny smells_hot smells_like_burning smells_of_burning smells_of_fish smells_of_hot smells_of_plastic smells_off smells_sweet solvent strange_smell sweet_smell weird_smell',
  eggs: 'egg eggs eggy rotten_egg~ sulfur sulphur',
  'gas-word': 'autogas bottled_gas butane camping_gas cooking_gas gas lpg propane',
  bottle: 'bottle bottles cylinder cylinders hose regulator',
  empty: 'empty gone_off out_of_gas ran_out refill refilled run_out runs_out',
  ignite:
    'cigarette fan fan_on fire_up flame_acceptable flick flip ignite ignition light_a light_it light_something light_the light_up lighter lighters lights_on look_with_the_lighter match match_to matches naked_flame pilot put_on_the_fan put_the_fan spark sparks strike_a switch switch_on torch torch_with turn_on whack_the_fan',
  acid: 'acid battery_acid electrolyte liquid spill spilled spilt splash splashed splashes sulphuric battery_water battery_fluid battery_juice',
  body: 'arm burns_my carpet clothes clothing eye eyes face feet fingers floor foot hair hands jeans kid leg lips mouth shirt skin sleeve stings swallowed',
  caps: 'battery_cells cap caps cells_and cells_to_top lids opened_the_battery plugs_off top_up_the_cells topped_the_cells topped_up_the_cells topping_up_the_cells',
  'battery-box':
    'battery_box bench bin box box_with boxed chest compartment crate cupboard drawer enclosure locker seat_box tool_box tub',
  'cut-open':
    'a_saw break_it_open break_open change_a_cell changing_a_cell chisel crack_open crack_the crack_the_case cut_into cut_it_open cut_open cut_the_case cut_the_lid cut_through cutting_open cutting_the_case cutting_the_lid dismantle~ drill_a drill_into drill_lid drill_my drill_the drill_through drilled_a drilled_into drilling_a drilling_the glued grinder hacksaw hammer knife knock_the_lid lid_off look_inside_the make_a_hole nail_through nailed open_battery open_it open_it_up open_my_lithium open_the_battery open_the_box open_the_case open_the_lid open_the_lithium open_the_pack open_up_a open_up_my open_up_the opened_up opening_the_battery opening_the_pack pierce~ poke_a pop_the_lid prick prise prised pry prying pull_the_lid puncture~ replace_a_cell saw_it saw_the saw_through sawed sawing screw_straight screw_through screwed_through see_what_is_inside self_tapper solder soldering split_the_case stab~ superglued swap_a_cell take_it_apart take_the_lid tapper the_lid_off took_it_apart vent_it_with with_saw with_the_angle',
  case: 'case casing cover lid pack shell',
  bms: 'b_m_s battery_management bms protection_board protection_circuit',
  bypass:
    'around_it around_the_bms bridge bridged bridging by_passed bypass bypassed bypassing cheat cut_out_the cut_the_bms defeat defeating direct_off_the_cells direct_to_cells disable ditch~ fool jump_across jump_out jumper_out jumper_wire link linking loop looped off_that_protection override past_it remove_bms remove_the_bms round_it short_out shorting skip_the_bms straight_off_the_cells straight_to_the_cells switch_that_protection take_out take_the_bms trick turn_off_the_protection wire_around wire_past without_bms without_the_bms',
  'short-circuit':
    'across_both across_the_terminals arc arced bang both_poles both_posts bridged_both dead_short screwdriver shifter short_circuit short_circuited shorted spanner wrench',
  reuse:
    'again another_trip back_in_service keep_using normal still_good still_ok still_okay still_use still_using use_it',
  // Fuses.
  fuse: 'fuse fused fuses fusible fusing fuze fuzes',
  blow: 'blew blow blowimg blowin blowing blown blows breaking breaks breaks_always broken burn_out burned burning burns burns_through burnt carked died dies dying failed fails failure fell_out fuse_goes fuse_is_broken fuse_went fuses_out go_on_me goes goes_all goes_off goes_out goes_pop gone_again is_broken_each keep_breaking keeps_breaking keeps_dying keeps_going keeps_tripping kept_dying kept_going letting letting_go melted melting melts_through opens pop popped poppin popping popping_at pops recurrent repeated takes_out taking_out trips dies_every dies_each',
  bigger:
    'beefier bigger biggest blade_30 bump_up chunkier double_the_size fatter go_up going_up greater heavier higher increase increas~ larger more_big more_strong next_number next_one_up next_size oversized raise raising size_after size_up step_it_up step_up stepping_up stronger twice_the_size up_a_size up_to_a upped uprate uprated upsize upsized',
  'put-in':
    'bang_in bung chuck chucked fit fitted in_there install instead jam jammed pop_a pushed put replace replaced shove shoved slap stick stuck substitute swap swapped take_a threw throw toss tried try_a use_a use_that whack',
  foil: 'a_coin a_screw alfoil aluminium_paper aluminum_foil bit_of_wire bolt brass_bolt bridged_the_fuse coin copper_wire doubled_it doubled_up foal foil foil_from foil_off gum_wrapper hairpin jumper_wire kitchen_foil nail next_to_each_other paper_clip paperclip piece_of_wire screw screw_in side_by_side silver_paper solder solder_wire soldered solid_link spoon stacked staple strand tin_foil tinfoil washer wrapper',
  'no-fuse':
    'any_fuse fuse_absent fuse_at_all fuse_free fuse_left_out fuse_missing fuse_none fuse_omitted fuseless isnt_a_fuse isnt_the_fuse nae_fuse no_fuse no_fuses no_fuses_anywhere no_inline_fuse no_main_fuse no_protection no_reason_for none_of_them_fused not_fused nothing_between omitted_owing overcurrent_protection protection_omitted reason_for_a_fuse skip_fuse skip_the_fuse skipping_fuses so_theres_no_fuse unfused unprotected without_a_fuse without_fuse without_fuses without_the_fuse never_used_fuses never_used_a_fuse never_had_a_fuse dont_use_fuses dont_believe_in_fuses',
  omit: 'away bother bothered did_without didnt_bother do_without dont_bother for_folk for_people forgot_the forgot_to fuses_omitted go_unfused gone_unfused lack leave_it_off leave_it_out leave_off leave_out leave_the leaving_out left_it_out left_off left_out left_the_fuse missing nae never_bothered no_breaker no_need no_protection no_room none not_bother nothing nothing_else omit omitted overkill pointless silly skip skipping took_out unfused unprotected useless waste who_needs without without_any without_one without_protection',
  direct: 'bare bolted direct directly hard_on right_on right_to slap straight wired_directly',
  post: 'clamp clamps pole poles post posts terminal terminals',
  'short-run': 'centimeters centimetres cm metre near only short shorter thick tiny',
  // Mains.
  mains:
    '110_volt 110v 115v 120_v 120_volt 120v 220 220_v 220v 230 230_v 230_volt 230v 240 240_v 240_volt 240v camp_power domestic domestic_supply grid high_voltage hook hook_up hookup hookup_box household household_power landline mains park_power pedestal shore shore_line shore_power site_power',
  socket:
    'gpo outlet outlets pocket points power_point power_points power_socket powerpoint powerpoints receptacle receptacles skt socket sockets wall_outlet wall_socket',
  inlet: 'entry in_let inlet inlets shore_plug',
  switchboard:
    '230_box board breaker breaker_board breaker_box breaker_in breaker_panel breakers circuit_breaker consumer_box consumer_unit db db_board differential distribution_board earth_leakage fi_switch fuse_box gfci panel_board rcbo rcd rcds residual residual_current safety_breaker safety_switch subpanel switchboard trip_breaker trip_switch trip_switches',
  'wire-up':
    'add adding build_in cable_size chase chasing connect connected connecting electrics fit fitting hard_wire hard_wired hardwire hardwired hook_up_the install installed installing pittin put_in putting rewire run_the_230 self_install terminations wire wire_gauge wire_in wired wires wiring',
  myself:
    'a_clip alone amateur by_hand by_my by_ourselves carpenter diy doing_it electrician_wants from_a_video grandson_and_i handyman herself himself i_make_one im_doing licence masel me_and_my me_own me_self meself my_brother_is my_dad_is my_elf my_grandson my_own my_self myself never_done no_electrician no_licence no_qualifications no_sparky not_an_electrician off_a_video on_my_own one_more_socket ourselves own_my own_self own_work pittin_in plumber self_fitted self_install self_installed sen_himself sparkies_cost sparky_is_too sparky_needed sparky_wants themselves unlicensed unqualified watched_a_video weekend_project without_a_sparky without_an_electrician without_electrician yourself youtube',
  electrician: 'electrician electricians licensed qualified sparkie sparkies sparky',
  'did-it':
    'by_an_electrician by_the_electrician certified certified_electrician electrician_came electrician_did electrician_fitted electrician_installed had_it_wired licensed_electrician licensed_man sparky_did sparky_fitted the_sparky_put with_papers',
  'which-wire':
    'blue_green brown brown_blue color_wire colour_wire colours_go earth_thing earth_wire green_yellow in_which_hole live_and live_wire neutral neutral_wire what_colour where_goes where_i_connect which_color which_colour which_one_goes which_screw which_terminal which_wire which_wires',
  tingle:
    'a_shock bite buzz_from buzz_off buzzes_when electric_feeling electric_shock electrocuted get_shocked live_when pins_and_needles shock shocks tickle tickled tickles tickling tingle tingles tingling tingly zap zapped zapping zaps',
  'both-ends':
    'baith_ends both_ends both_sides both_the_ends both_the_sides double_ended double_ender double_headed double_male double_plug each_end each_side either_end either_side every_end having_two_plugs m_to_m male_both male_each male_male male_on_both male_on_each male_to_male one_end_plug plug_and_plug plug_at_both plug_at_either plug_at_this plug_either plug_on_either plug_pins_at_both plug_to_plug plugs_at_both plugs_on_both suicide two_ends two_male two_males two_plugs widow_maker widowmaker',
  plug: '3_pins male male_plug pin pins plug plugged plugging plugs prong prongs three_pins two_pins',
  cord: 'adapter adaptor cable cables cord cords cube extension extensions flex four_way gang_lead hookup_cable lead leads multi_plug multiplug power_strip powerboard reel splitter',
  'earth-pin':
    'earth earth_contact earth_leg earth_pin earth_prong earth_tab earthed earthing_pin filed_down ground ground_contact ground_pin ground_prong ground_tab middle_pin pin_of pin_of_earth pin_off round_pin that_pin third_contact third_leg third_one third_pin third_prong',
  'cut-off':
    'bent bent_out break broke broken cut cut_away cut_off cutters file filed filed_off ground_down ground_off hacksawed hack~ nipped off plier pliers pulled_out removed removed_to sawed sawed_off sawn snap snapped snapped_it snip_off snipped taken_away took_away',
  tape: 'bag bags carrier cling_film elastic gaffer sandwich_bag splice spliced tape taped twisted wrapped',
  join: 'chain chained connection coupler coupling join joined joining joins joint meet splice',
  coiled:
    'coil coiled drum havent_unrolled havent_unwound left_rolled not_unrolled not_unwound on_the_drum rolled_up still_on_the_reel untangl~ without_unrolling wound wound_up',
  'plug-change':
    '10_amp_extension 13a 15_amp 15a 16_amp 16a 16a_plug 32a 32a_plug adapter adaptor amp_plug bigger_plug cheap_extension different_plug fit_a_15 garden_extension household_extension lawnmower_lead orange_lead plug_on_the_10 round_pin snip thin_extension',
  house:
    'apartment bungalow cottage domestic dryer_socket flat flat_in freezer_in_the granny grid home homes house household hut kitchen kitchen_socket lounge neighbours shed the_wall_in wall washing_machine',
  feed: 'back_feed backfeed backfeeding energise~ energising energize~ fed feed feeding feeds lead_into liven livens plug plugged plugging plugs power powering push push_the_lead pushes pushing run_a_lead run_the_lead shove shove_the shoves shoving supplies supply',
  'power-cut':
    'black_out blackout blackouts during_a_blackout electricity_is_out grid_down grid_failure grid_is_down grids_down lights_out lights_went lost_power lost_the_power no_current_in no_power_at outage power_cut power_cuts power_failure power_goes power_is_off power_is_out power_off power_out powers_off powers_out storm storms supply_failure without_power',
  'all-live':
    'all_live all_of_the_sockets all_sockets all_the_house all_the_lights all_the_plugs all_the_sockets alle_sockets caravan_from come_alive entire_house every_light every_outlet every_receptacle every_socket feed_the_house house_circuit house_lights house_wiring lights_work lit_up outlets_from own_sockets plugs_work points_live power_points_live power_the_house remaining_outlets rest_of_the runs_all sockets_work van_sockets whole_cabin whole_caravan whole_cottage whole_house whole_place whole_van',
  'both-on':
    'at_once both_feeding both_on permanently_joined ring same_circuit same_outlets same_ring same_skt same_sockets seems_to_share share shares',
  // Currents and limits.
  limit:
    '0_2c 0_5c allow allowed allows at_most c_rate can_deliver can_do cells_allow charge_limit cont cont_rating continuous continuous_rating continuously cutoff cuts_at discharge good_for is_the_most let_out lets_only lets_out limit limited limits maker_says makers_limit max max_charge maximum maximum_charge maximum_of most_itll nae_mair no_higher_than no_more_than the_most tops_out up_to written_max very_most at_the_very the_very_most',
  'big-load':
    'air_fryer aircon airfryer blender coffee cooker dryer espresso grill hairdryer heat_gun heater hob induction iron jug kettle microwave pan toaster',
  inverter: 'inventor inverted inverter inverters invertor',
  ciggy:
    '12_v_socket 12_volt_socket 12v_socket accessory_outlet accessory_socket aux_socket cig_lighter cig_outlet cig_plug cig_socket cig_sockets cigar_lighter cigar_lighter_socket cigar_outlet cigar_socket cigarette_lighter cigarette_lighter_plug cigarette_plug cigarette_socket ciggie ciggy dash_outlet dash_socket lighter_lead lighter_outlet lighter_plug lighter_rocket lighter_socket socket_of_cigarette',
  'small-plug': '12_pin 13_pin 7_pin 7_pole seven_pin seven_pole trailer_connector trailer_plug',
  thin: 'bell_wire cheap doorbell_wire garden_cable indoor_extension lamp_flex light_duty lightweight little_wire orange skinny skinny_wire speaker_cable speaker_wire telephone_wire thin thin_cable thin_extension thin_orange thin_red thin_wire titchy',
  'wire-word': 'awg cable cables conductor flex gauge insulation lead leads wire wires',
  alternator: 'altenator alternator alternators',
  isolator: 'isolator relay solenoid split_charge vsr',
  dcdc: 'b2b booster charger_between dc_dc dc_to_dc dcdc',
  safe: 'acceptable allowed alright any_harm fine ok okay permissible permitted safe',
  // Cold.
  frost:
    'arctic below_freezing below_zero blizzard brass_monkeys cold_cutoff freeze freezes freezing_point frost frosts frosty froze froze_solid frozen frozen_over frozen_solid frozen_this full_of_ice gefroren has_frozen hear_ice hoar ice_everywhere ice_in_the ice_inside ice_on ice_on_the ice_this ice_was icebox_outside iced iced_up icicles icy igloo it_froze it_has_frozen low_temp low_temp_cut low_temp_cutoff low_temperature low_temperature_cut overnight_freeze ski ski_field ski_trip skiing snow snow_chains snowed snowing snowy solid_ice sub_zero subzero there_was_ice under_zero windscreen_ice',
  'cold-word': 'bitter cauld chilly cold freezing nippy snow_season winter wintry zero',
  charge:
    'charge charger chargers charges chargin charging charging_current fill filling full recharge recharging top_up topped topping',
  source: 'alternator dc_dc dcdc drive driving hookup mains_charger panel panels solar sun',
  // Joining batteries.
  parallel:
    'alongside in_parallel joined_to link_them linked paralel parallel paralleled paralleling parallell parallelled parralel parrallel plus_to_plus plus_with_plus pos_to_pos positive_to_positive red_to_red same_posts side_by_side unite unite_plus',
  'join-batteries':
    'across_the_terminals add alongside bank boost boosting bridged busbar clamped combine combined coupled go_with hook hooked join joined joining link linked linking mix mixed mixing next_to permanently plus_to_plus same_busbar share side_by_side sit_with strap strapped together',
  old: '2017 2018 2019 2020 2021 2022 aged ageing aging auld elderly old old_ones older oldie second_hand tired tired_old worn',
  new: 'bought brand brand_new fresh new newer replacement spare unused young',
  'one-of-them':
    'one_from one_from_them one_is one_new one_of one_of_em one_of_the one_of_them ones_a ones_new',
  // Starting.
  jump: 'a_boost a_jump a_start boosted booster_cables boosting bump_start give_a_start give_start help_start jimp jump jump_cables jump_her jump_him jump_it jump_lead jump_leads jump_pack jump_start jump_started jumped jumper jumper_cables jumper_leads jumpers jumping jumpstart jumpstarting need_a_boost slave_start start_aid start_from start_help start_other start_people starter_help starting_cables starting_help take_power_from take_the_power_from use_the_caravan',
  clamps:
    'any_old any_way black_first black_lead black_or cables cables_on clamp clamps clips croc_clips crocodile_clips first_black first_clamp first_red hook_em hooking lead_first leads negative_first order_of positive_first red_first red_lead red_or what_order which_clamp which_lead which_order',
  'no-start':
    'battery_empty battery_is_dead battery_is_empty batterys_dead cactus cannot_start cant_get_the_car cant_start car_dead car_is_dead cars_dead conked couldnt_start cranker_dead cranker_is_dead dash_is_dead dead dead_battery dead_dash deid didnt_start does_not_crank does_not_start does_not_turn doesnt_go doesnt_go_on doesnt_start doesnt_turn engine_dead flattened gaun immobilised its_dead killed_my killed_the klick no_crank no_start not_crank not_going not_start not_starting not_starts not_turning nothing_happens now_its_dead out_of_battery refuses_to_start rrr starts_not still_wont stsrt tac_tac tick_tick unstartable will_it_not will_not_start wont_crank wont_even wont_fire wont_fire_up wont_get_going wont_go wont_start wont_start_up wont_turn',
  car: 'bakkie bakkies bike boat buggy camper car cars coach donk engine lorry motor motorbike motors outboard pickup quad scooter tractor truck ute utes van vehicle',
  starter:
    'auto_battery battery_of_the_engine battery_of_the_motor battery_under_the_bonnet bonnet_battery car_battery car_only_battery crank_battery cranker crankin_battery cranking_battery engine_battery ignition_batt ignition_battery ignition_on key_on key_turned main_battery main_car_battery motor_battery only_battery start_batt start_battery starter starters starting_battery under_bonnet vehicle_battery only_battery_of battery_of_the_car battery_of_my_car',
  'will-start':
    'crank cranked cranking cranks drive_off fire_up fired_up fires_up get_away get_going get_home start start_after starts still_start turn_over turned_over turns_over',
  remote:
    'alone around_for_miles desert far_from kilometres_from km_from middle_of_nowhere miles nearest_town no_comms no_network no_one no_one_around no_reception no_reception_here no_signal nobody out_bush out_of_range outback remote solo',
  slow: 'barely groan~ labour~ lazy slow slower slowly sluggish struggl~ turned_slow turning_slow turned_slowly',
  'all-night':
    '2_days all_day all_evening all_knight all_night all_nite all_the_night all_weekend days night_long overnight since_last_night since_yesterday the_night the_night_through through_the_night two_days weekend whole_nicht whole_night whole_weekend',
  always: 'all_weekend always every_time every_trip for_years never_failed',
  // Health.
  medical:
    'airway apap apnea apnea_device apnoea apnoea_mask apparatus apparatus_for_breathing asthma asthma_machine biologic bipap breath_machine breathe_with breather breathes_with breathing_aid breathing_device breathing_machine breathing_mask breathing_support c_pap concentrator concentrators cooled_medicine cpap cpaps cpaps_on defibrillator dialysis doesnt_stop_breathing epipen feeding_pump heart_failure heart_monitor home_oxygen hospital_bed humidifier infusion inhalation inhalator inhaler injection injections insulin insuline insulines is_diabetic lung_machine machine_for_breathing machine_for_sleep machine_i_breathe machine_to_breathe mask_at_night mask_he_sleeps mask_she_sleeps masks_for_the medical_device medical_fridge medication medication_fridge medicine medicine_fridge medicines mobility_scooter my_diabetic nebuliser nebulisers nebulizer night_mask nighttime_mask o2 o2_concentrator on_o2 on_oxygen oxigen oxygen_all oxygen_at oxygen_bottle oxygen_concentrator oxygen_generator oxygen_machine oxygen_overnight oxygenator pap_machine peg_feed pills_cold pulmonary respirator respiratory sleep_apnea sleep_apnoea sleep_apnoea_mask sleep_machine sleeping_mask_machine snore_mask snoring_machine stoma stop_breathing stops_breathing suction_machine syringe_driver tpn vaccines ventilator vpap wheelchair sleep_mask mask_machine mask_thing mist_machine mist_machines feed_pump feeding_tube tube_fed kidney_machine suction',
  'not-here':
    'at_home back_home dont_take fish_tank for_good given_up home_this_time leaving_the left_behind mask_is_fine masks_fine no_longer no_mate no_takin no_taking not_coming not_talking not_this_time off_the_sleep remains sold staying_home stays_home stopped_using',
  // Words that take a danger away.
  price: 'heart_attack price prices',
  weather:
    'ankle creek dam eyes flood lake river road stream tide knee finger foot toe leg lip hand face glands creeks',
  same: 'another equal identical like_for_like new_one same same_again same_size',
  which: 'what_fuse what_size which_fuse which_fuses which_size',
  'charger-thing': 'busbar charger chargers controller dcdc fridge holder isolator plug regulator',
  leak: 'escaping hissing leak leaked leaking leaks leaky loose',
  'cut-out': 'bridged_out crimped cut_out joined_the_two removed took_the twisted',
  'add-one': 'add adding fit install one_more put_in',
  holder: 'holder holders terminal',
  flames: 'flame flames',
  solar: 'mppt panel panels pv pwm solar string',
  'flued-heater':
    'air_heater boiler chinese_diesel combi_heater diesel_air diesel_heater diesel_heating fuel_heater heater_diesel heater_on_diesel night_heater parking_heater petrol_heater webasto_type',
  flat: 'dead_flat drained flat flattened flattens',
  bed: 'above_it bed bed_is_over bedroom beds beneath_us berth berths bunk bunks cot inside_the_tent next_to_my_head on_top over_the sleep_above sleep_over sleeping_on under_my_kids under_our under_us where_i_sleep where_we_sleep',
  'need-it':
    'compulsory do_i_even do_i_have_to do_i_honestly do_i_need do_i_really do_i_realy do_i_rlly do_we_need dont_need fuse_genuinely fuse_necessary fuse_required genuinely_required have_to_fuse is_a_fuse is_it_needed must_i necessary_fuse need_a_fuse need_fuse need_of_a need_one needs_a_fuse no_need really_a_fuse really_necessary really_need rlly_need should_there_be worth_it',
  'switch-to':
    'before_i_jump castle jump_from_a jump_in jump_to jumping_castle jumping_from jumping_to make_the_jump quick_jump the_jump_from',
  plea: 'cant_i come_on even even_for just just_for just_one only simply surely tho though what_could_happen',
  claims: 'reckons said say says tom wanda',
  each: 'apiece both_have each per_battery',
  agm: 'a_g_m agm agms',
  gel: 'gel gels',
  flooded: 'flooded wet_cell',
  fat: 'balloon cushion domed fat gone_round pillow pregnant tummy',
  unbearable:
    'burn_my_fingers burns_my_hand burns_the_hand can_not_touch cannot_hold cannot_keep cannot_leave cannot_touch cant_hold cant_keep cant_keep_my cant_touch hurts_to_touch not_hold not_leave_the_hand too_hot_to unbearable untouchable wont_hold wouldnt_hold',
  'broken-cell': 'bad_cell cell_broken cell_has_failed cell_in_my cells_cactus dead_cell',
  'cell-word': 'cell cells',
  exploded: 'bang blew_up blown_up detonat~ explode~ exploding explosion went_bang went_pop',
  damaged:
    'crack cracked crushed dent dented dropped drowned flooded_with leaking oozing punctured red_hot ruptured salt_water sea_water seawater squashed submerged under_water weeping',
  insulation:
    'busbar cable cables connector connectors fuse holder insulation lead lug lugs plug relay socket switch terminal terminals wire wires wiring',
  'gas-alarm': 'gas_alarm gas_detector gas_sensor lpg_alarm lpg_detector propane_alarm propane_detector',
  'add-verb':
    'add adding build change changing connect connecting extend extending fit fitting hooking_up install installing move moving put putting replace replacing rewire rewiring run_a splice spur tap_off tapping upgrade wire wiring swapping swap',
  'mains-thing':
    '230_lights 230_v_socket 240_lights aircon breaker breakers circuit_breaker consumer_unit cooker_point double_gang double_plug double_socket extra_breaker fuse_board gpo hook_up_socket hookup_socket household_outlet inlet kettle_point light_fitting light_switch lights_off_the_inverter lights_on_230 new_point outlet outlet_by outlets point power_outlet power_points rcd receptacle socket sockets twin_socket wall_outlet wall_plug wall_point water_heater trip_switches',
  'no-earth':
    'binned_it bridged_out disconnected_the_rcd earth_missing looped_out missing_earth no_breaker no_earth no_ground no_rcd out_the_rcd pulled_out rcd_out rcd_removed taken_it_out taken_out threw_out took_it_out took_out_the unearthed ungrounded without_breaker without_earth without_ground without_rcd',
  rolled: 'bundle coil coiled drum reel rolled spool still_rolled wound',
  exposed:
    'bare bare_wires chewed chewed_through choc_block chocolate_block crushed cut_in cut_through electrical_tape exposed frayed has_a_cut nick nicked patched see_the_wires showing_copper taped uncovered wrapped_it',
  'swap-word':
    'bung_in can_i_fit changed_the dying gunna_bung i_place in_place in_place_of in_where instead intended ive_ordered ordered_a place_one ready replaced so_25 stepped substitute substitution swap swapped upgraded where_the take_one i_take_one',
  'fuse-foil-2': 'across_the bit_of_wire chewing_gum cigarette_packet coin nail piece_of_wire strand_of',
  hooked: 'attach attached clipped connected hooked ran running tied wired',
  'bypass-fuse':
    'bridged_the_fuse bypass_the_fuse bypassed_fuse bypassed_the_fuse bypassing_the_fuse fuse_bridged fuse_bypassed jumped_the_fuse',
  supply: 'bollard campsite hookup_post pedestal post_supply site_breaker site_supply',
  'second-battery':
    'add_a_battery another_battery aux_battery auxiliary caravan_battery extra_battery house_battery leisure_battery other_battery second_battery spare_battery',
  different:
    'different dissimilar mismatched mixed not_the_same unequal unlike varying different_ages different_age',
  'age-word': 'age ages brand make old older year years',
  'car-battery': 'car_battery cranking_battery engine_battery starter_battery truck_battery',
  'start-engine':
    'car_going crank_the_engine get_it_going get_the_car_going get_the_van_going start_a_car start_a_diesel start_a_friends start_a_motor start_an_engine start_another start_diesel start_friends start_his start_my_car start_my_friends start_my_van start_our start_someone start_the_car start_the_diesel start_the_engine start_the_motor start_the_truck start_the_ute start_the_van',
  'dead-car':
    'car_only car_wont clicks_when dash_is_dead engine_dead engine_only engine_wont goes_click it_wont_crank it_wont_start it_wont_turn just_click just_clicks motor_wont no_crank now_no_crank only_clicks tick_tick truck_wont ute_wont van_wont wont_start_this',
  'tingle-metal':
    'body bonnet chassis door_handle frame hooked_up hookup metal plugged_in sink site skin step tap',
  twist: 'choc_block join_the_wires spliced splicing taped_together twist twist_together twisted twisting',
  'nothing-else': 'just_wires no_breaker_nothing nothing_between nothing_else only_wires two_wires',
  'lead-kind': 'lead',
  'help-word': 'help offered offers stuck what_can_i_do what_do_i_do what_now',
  monitor: 'bms_app display meter monitor net reading readout reads screen shunt',
  'ppm-word': 'ppm reading readout reads says showing shows',
  'unit-alarm': 'draws ma milliamps takes uses',
  clicks:
    'clack clacks clic click clicking clicks just_a_click just_clicks klack klick licks only_a_click tac_tac',
  far: '10_m 15_m 20_m 30_m 40_m behind_the_trees downwind m_away meters_away metres_away open_field outdoors outside paddock thirty_metres well_away',
  detector: 'co_reader detector sniffer',
  chained: 'chain chained daisy daisychained in_a_row strung',
  flex: '10a_cable 10a_lead 6a bell_wire flex lamp_flex thin',
  'trip-word': 'main_breaker main_switch mains_still switch_off_at switch_still',
  'fuse-like': 'blade blades fuse fuses holder',
  'no-dcdc':
    'a_relay isolator_only just_an_isolator no_b2b no_charger_between no_dc_dc no_dcdc nothing_between only_an_isolator standard_alternator with_a_relay without_b2b without_dc without_dcdc',
  mixing: 'mix mixed mixing',
  chemistry: 'brands chemistries chemistry kinds types',
  'battery-dead': 'battery_dead battery_is_dead batterys_dead dead_battery killed_my_starter now_its_dead',
  'denied-heat': 'hot_water',
  lug: 'crimp crimps lug lugs',
  'limit-word': 'booklet label plate rating sticker written',
  'for-sale': 'brochure for_sale hardly_used sale sell selling',
  twins: 'both equal identical same two_equal',
  'clamp-order':
    'red_first black_first first order_of which_clamp which_lead which_order what_order red_or black_or first_clamp any_old any_way whichever positive_first negative_first red_on red_to',
  'year-word': '2014 2015 2016 2017 2018 2019 2020 2021 2022',
} satisfies Readonly<Record<string, string>>;

/** The words before a thing that say there is none of it. */
export const denials: ReadonlySet<string> = new Set(
  'no not without never nae isnt arent dont doesnt didnt havent hasnt aint nor neither'.split(' '),
);

/** Concepts that a denial just before them takes away. */
export const deniable: ReadonlySet<string> = new Set([
  'symptom',
  'medical',
  'smoke',
  'smell',
  'coals',
  'cooker',
  'exhaust',
  'swollen',
  'hot',
  'hiss',
  'sounds',
  'fuel-heater',
  'heater',
  'generator',
  'lithium',
]);

/** Words of every day that are no slip of a word above, however near they are. */
export const ordinary: ReadonlySet<string> = new Set(
  'ventilador smoked sparkler sparklers reader readers leader leaders singer showing showed munches lungs rusty dusty action adder alarming average baggage baking banging bathing batty beach beading bearing beating bedding belting bench better binding bitter bladder blazing blunder boarding boasted booking bounding bowling brained branch breams breathe bringing brother bubble budge bugger building bumping bundle burgers busted butler butter cabbage cables camped camping candle capping caring carried carries catch causing change changed changer changes changing charming chasing checked cheese chill chilli chips choose chopping church cleaner clearer clearing clever clipping closely closer closet closing clothes cloud clouds cloudy coasted coldest coober cooking cooled cooler coolers cottage cottages couch cougar couple courage cracker cramping crease creeping crowd damage damping dating defect dental dimple diving dollar double drained drawing dripping dumping dusted easing eating eighty erasing fables faking farming faster father fearing feeding felting fiddle fifty fighter finder finding fitting flame flares flatter flipping folding forage forming forty fraction freezer freezers friction fried frosted function gables ganging garage garlic gasping gather gearing getting goose grained grease grinding gripping growing halting handle hanging hardware hatch heading hearing heather heavier heavily higher hitting hoarding holding honest hooking hoping hopping hosted hottest humping hunting increase inventory jingle junction jungle keeping ladder landing lapping large lasted lasting latch latest latter launch launched leading leased leasing leather lending letter letters lighter litter lives loading looking looped loose loosing losing lowest luggage lumping lunch making manage mapping march massage match matter medals meeting melting mental message metals middle minding moaning models modest molest moose moulding mourning napping nation nearing nested ninety nipper oldest option options package packet packing paddler painting panels parent parking passage pasted patch patient paying pedals peeping pelting people perce petals picking pints pitch planting plating please plenty porch postage posted printing propped puddle pumping rained raised raising raking rally rather rating ration rations reach reading release remain rental renting require requires rested retire riddle ringing rising roasted rounding rudder ruining sadder saddle saddler salting sample sanding sausage saying scaring scoring scout seating section sending setting seventy sewing shades shaking sharing sheeting shipping shoeing shoes shooting shopping shoring shouted shouts shower shudder signed simple singing single sings sipping sitting sixty skating slating sleeping slice slinging slipped slipping smiled smiling snaring snoring sorted sorting sounding sparing spelling spending sprained spring springs sprung stable stacking stained staking stamping stand standing staring stars starting state states stating station stations stayed stepping sticking stickler sting stirring stocking stones stopping storage storing storming strained string strings strong strung sugar swamping swarming sweeping table tables taking taper tapping tasted teach tearing teasing temple tested thirsty thirty thunder tighter tingle tipping toast toasted toddler torch touch tracking traction trailer trailers trained tramping trawler trouble trucking trusted twenty under unused update upside vested vinegar waiting waking wander warning washed wasted watch wearing weather wedding weeping welding whether whipping winding winner wonder zapping'.split(
    ' ',
  ),
);
