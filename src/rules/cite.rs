//! The documents that rules rest on, each with how it was checked.
//!
//! An unknown edition is left empty rather than guessed.

use crate::tables::source::{Mark, Source};

const NEC: &str = "NFPA 70 (NEC)";

/// Trade practice.
pub(super) const PRACTICE: Source = Source::common_practice();

/// Circuits for continuous loads: 125 %.
pub(super) const NEC_210_20: Source = Source::new(NEC, "210.19(A), 210.20(A)", "", Mark::Secondary);
/// A single receptacle on its own circuit.
pub(super) const NEC_210_21_B1: Source = Source::new(NEC, "210.21(B)(1)", "", Mark::Secondary);
/// The total load that one receptacle may carry.
pub(crate) const NEC_210_21_B2: Source = Source::new(NEC, "210.21(B)(2)", "", Mark::Secondary);
/// Which receptacles may be on which circuits.
pub(super) const NEC_210_21_B3: Source = Source::new(NEC, "210.21(B)(3)", "", Mark::Secondary);
/// Protection of conductors and flexible cords at their ampacity.
pub(super) const NEC_240_4: Source = Source::new(NEC, "240.4, 240.5(A)", "", Mark::Secondary);
/// The supply cords of listed appliances.
pub(super) const NEC_240_5_B1: Source = Source::new(NEC, "240.5(B)(1)", "2023", Mark::Secondary);
/// Listed cord sets, within their listing.
pub(super) const NEC_240_5_B3: Source = Source::new(NEC, "240.5(B)(3)", "2023", Mark::Secondary);
/// The usual markings of cord sets by gauge and length.
pub(super) const UL_817: Source = Source::new("UL 817", "114, 115", "", Mark::Secondary).noted("cord-sets");
/// Full-load currents of single-phase motors.
pub(super) const NEC_430_248: Source = Source::new(NEC, "430.248", "", Mark::Secondary).noted("table");
/// Field-assembled cord sets on 20 A circuits.
pub(super) const NEC_240_5_B4: Source = Source::new(NEC, "240.5(B)(4)", "", Mark::Confirmed);
/// Standard breaker sizes.
pub(super) const NEC_240_6: Source = Source::new(NEC, "240.6(A)", "", Mark::Memory);
/// Ampacity of flexible cords.
pub(super) const NEC_400_5: Source = Source::new(NEC, "400.5(A)(1)", "", Mark::Secondary).noted("table");
/// Ampacity of flexible cords marked in mm².
pub(super) const BS_7671: Source = Source::new("BS 7671", "4F3A, 4F1A", "", Mark::Secondary).noted("tables-metric");
/// Which conductors of a cord count as current-carrying.
pub(super) const NEC_400_5_A: Source = Source::new(NEC, "400.5(A)", "2023", Mark::Secondary);
/// Voltage drop, informational.
pub(crate) const NEC_DROP: Source = Source::new(NEC, "210.19", "2023", Mark::Secondary).noted("informational");
/// Resistance of conductors.
pub(super) const NEC_TABLE_8: Source = Source::new(NEC, "", "", Mark::Confirmed).noted("chapter-9-table-8");
/// Resistance of conductors marked in mm².
pub(super) const IEC_60228: Source = Source::new("IEC 60228", "5", "", Mark::Secondary).noted("class");
/// Service voltage of 114 to 126 V.
pub(super) const C84_1: Source = crate::tables::volts::RANGE_A;
/// Utilization voltage, where things are plugged in.
pub(super) const C84_1_IN_USE: Source = crate::tables::volts::RANGES_IN_USE;
/// Locked-rotor currents of motors.
pub(super) const NEC_430_251: Source = Source::new(NEC, "430.251(A)", "", Mark::Confirmed);
/// Locked-rotor power of motors by code letter.
pub(super) const NEC_430_7: Source = Source::new(NEC, "430.7(B)", "", Mark::Confirmed).noted("table");
/// Generators that by design prevent their own overload, and the conductors behind them.
pub(super) const NEC_445_12: Source = Source::new(NEC, "445.12(A), 445.13(A)", "", Mark::Secondary).noted("exception");
/// The 30 A supply of a camper and its main breaker.
pub(crate) const NEC_551_42: Source = Source::new(NEC, "551.42(C), 551.45", "", Mark::Memory);
/// Ground-fault protection on portable generators.
pub(super) const NEC_445_20: Source = Source::new(NEC, "445.20(A)", "", Mark::Secondary).noted("floating-outlets");
/// Ground-fault protection of temporary power for construction, maintenance and the like, as a trade article quotes it.
/// A camp is none of these.
pub(super) const NEC_590_6: Source = Source::new(NEC, "590.6(A)(3)", "", Mark::Secondary).noted("construction-sites");
/// No ground-fault protection is required at the large outlets of campsites.
pub(super) const NEC_551_71: Source = Source::new(NEC, "551.71(F)", "", Mark::Secondary).noted("camper-outlets");
/// The neutral is bonded to ground once, at the source.
pub(super) const NEC_250_142: Source = Source::new(NEC, "250.142(B)", "", Mark::Secondary);
/// The trip current of a class A device.
pub(super) const NEC_CLASS_A: Source = Source::new(NEC, "100", "", Mark::Confirmed).noted("class-a");
/// Equipment that keeps a generator and the utility apart.
pub(super) const NEC_702_5: Source = Source::new(NEC, "702.5", "", Mark::Secondary);
/// OSHA's exemption of small generators.
pub(super) const OSHA_404_B: Source =
    Source::new("29 CFR", "1926.404(b)(1)(ii)", "", Mark::Confirmed).noted("small-two-wire");
/// What a receptacle tester shows on a generator.
pub(crate) const OSHA_LETTER: Source = Source::new("OSHA", "", "1993-09-03", Mark::Confirmed).noted("letter");
/// Grounding-type equipment needs a cord with a ground.
pub(super) const OSHA_334: Source = Source::new("29 CFR", "1910.334(a)(3)", "", Mark::Secondary);
/// Coiled cords overheat.
pub(super) const ROSPA: Source = Source::new("RoSPA", "", "", Mark::Confirmed).noted("extension-cords");
/// Markings of cords for outdoor use.
pub(super) const NEC_400_4: Source = Source::new(NEC, "400.4", "", Mark::Secondary).noted("table-note-9");
/// Plug and receptacle configurations.
pub(super) const WD_6: Source = crate::tables::shape::SOURCE;
/// Derating of generators by air temperature and altitude.
pub(super) const ARMY_TM: Source = Source::new("US Army TM 9-6115-673-13&P", "2-3", "", Mark::Confirmed).noted("table");
/// A distance of at least 20 ft.
pub(super) const CPSC_DISTANCE: Source = Source::new("US CPSC", "", "2020-07-24", Mark::Secondary).noted("generators");
/// A distance of 20 ft from doors, windows and vents, including campers.
pub(super) const NC_DHHS: Source = Source::new("NC DHHS", "", "", Mark::Confirmed).noted("monoxide");
/// A distance of more than 4.6 m with the exhaust pointed away.
pub(super) const NIST_2011: Source = Source::new("NIST, Emmerich & Wang", "", "2011", Mark::Confirmed);
/// A distance of at least 25 ft (7.6 m).
pub(super) const NIST_2021: Source = Source::new("NIST", "", "2021", Mark::Confirmed).noted("generators-monoxide");
/// The effects of carbon monoxide by level.
pub(super) const CPSC_LEVELS: Source = Source::new("US CPSC", "", "", Mark::Secondary).noted("monoxide-levels");
/// When a carbon monoxide alarm must sound.
pub(super) const UL_2034: Source = Source::new("UL 2034", "", "", Mark::Secondary).noted("alarm-times");
/// Where the generators in fatal cases stood.
pub(super) const CPSC_2004: Source = Source::new("US CPSC", "", "2004-05-20", Mark::Confirmed).noted("deaths");
/// What power strips are made for.
pub(super) const UL_XBYS: Source = Source::new("UL", "XBYS", "", Mark::Secondary).noted("power-taps");
/// Sound limits for generators in national parks.
pub(super) const CFR_36_2_12: Source = Source::new("36 CFR", "2.12(a)(1)(i)", "", Mark::Secondary);
/// Refueling.
pub(super) const FEMA_2020: Source = Source::new("FEMA", "", "2020", Mark::Secondary).noted("generators");
/// Storing fuel, and what a spill does.
pub(super) const NY_DHSES: Source = Source::new("New York State DHSES", "", "", Mark::Confirmed).noted("fire-hazards");
/// Cylinders stand upright outdoors; the gas is heavier than air.
pub(super) const PROPANE: Source = Source::new("", "", "", Mark::Secondary).noted("propane");
/// Generators during fire restrictions: with an approved spark arrester and 3 ft of cleared ground around them.
pub(super) const USFS_ORDER: Source =
    Source::new("USDA Forest Service", "03-09-00-22-08", "2022", Mark::Secondary).noted("fire-order");
/// Equipment must be approved and listed.
pub(super) const NEC_110_3: Source = Source::new(NEC, "110.2, 110.3", "", Mark::Memory);

/// Leakage current of appliances.
pub(super) const UL_101: Source = Source::new("UL 101", "", "", Mark::Memory).noted("leakage");
/// How soon a breaker must trip.
pub(super) const UL_489: Source = Source::new("UL 489", "", "", Mark::Secondary).noted("calibration");
/// Generators with a floating neutral.
pub(super) const IET_OSG: Source = Source::new("IET On-Site Guide", "2.4.1", "", Mark::Secondary);
/// Ampacity in hot air.
pub(super) const NEC_310_15: Source = Source::new(NEC, "310.15(B)(1)(1)", "2023", Mark::Secondary).noted("table");
/// Spark arresters.
pub(super) const USFS_ARRESTER: Source =
    Source::new("USDA Forest Service", "", "", Mark::Confirmed).noted("spark-arresters");
/// Clear space around the generator.
pub(super) const FEMA_2011: Source = Source::new("FEMA", "", "2011", Mark::Confirmed).noted("clear-space");
/// Out of the rain, under a roof without walls.
pub(super) const RED_CROSS: Source = Source::new("American Red Cross", "", "", Mark::Secondary).noted("generators");
/// A cord or plug that feels hot or soft is no longer used.
pub(super) const CPSC_CORDS: Source = Source::new("US CPSC", "", "", Mark::Secondary).noted("extension-cords");
/// Heaters while people sleep, and on cords.
pub(super) const CPSC_HEATERS: Source = Source::new("US CPSC", "", "", Mark::Secondary).noted("heaters");
/// The same for portable heaters of every kind.
pub(super) const NFPA_USFA_HEATERS: Source =
    Source::new("NFPA, US Fire Administration", "", "", Mark::Secondary).noted("heating");
/// No use in rain.
pub(super) const OSHA_RAIN: Source = Source::new("OSHA", "", "", Mark::Secondary).noted("portable-generators");
/// Oxygen at home: no change of flow, a reserve for outages, no extension cord, no flame near it.
pub(super) const OXYGEN: Source = Source::new("", "", "", Mark::Secondary).noted("oxygen");
