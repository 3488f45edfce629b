/** States and provinces of big countries: code, then names, under the country. ISO 3166-2. */
export const states = `
=US
AL Alabama/AK Alaska/AZ Arizona/AR Arkansas/CA California/CO Colorado/CT Connecticut/DE Delaware/DC District of Columbia
FL Florida/GA Georgia/HI Hawaii/ID Idaho/IL Illinois/IN Indiana/IA Iowa/KS Kansas/KY Kentucky/LA Louisiana/ME Maine
MD Maryland/MA Massachusetts/MI Michigan/MN Minnesota/MS Mississippi/MO Missouri/MT Montana/NE Nebraska/NV Nevada
NH New Hampshire/NJ New Jersey/NM New Mexico/NY New York/NC North Carolina/ND North Dakota/OH Ohio/OK Oklahoma/OR Oregon
PA Pennsylvania/RI Rhode Island/SC South Carolina/SD South Dakota/TN Tennessee/TX Texas/UT Utah/VT Vermont/VA Virginia
WA Washington/WV West Virginia/WI Wisconsin/WY Wyoming
=CA
AB Alberta/BC British Columbia/MB Manitoba/NB New Brunswick/NL Newfoundland/NS Nova Scotia/ON Ontario
PE Prince Edward Island/QC Quebec/SK Saskatchewan/YT Yukon/NT Northwest Territories/NU Nunavut
=AU
ACT Australian Capital Territory/NSW New South Wales/NT Northern Territory/QLD Queensland/SA South Australia
TAS Tasmania/VIC Victoria/WA Western Australia
`;

/** What people call countries beside the names that the standard has. ISO 3166-1. */
export const countryNicknames: Readonly<Record<string, string>> = {
  uk: 'GB',
  england: 'GB',
  scotland: 'GB',
  wales: 'GB',
  'northern ireland': 'GB',
  britain: 'GB',
  'great britain': 'GB',
  usa: 'US',
  us: 'US',
  america: 'US',
  'the us': 'US',
  'the states': 'US',
  'the uk': 'GB',
  nz: 'NZ',
  aotearoa: 'NZ',
  oz: 'AU',
  aus: 'AU',
  holland: 'NL',
  'czech republic': 'CZ',
  'south korea': 'KR',
  uae: 'AE',
  turkey: 'TR',
  bosnia: 'BA',
  burma: 'MM',
  'ivory coast': 'CI',
  congo: 'CD',
};

/** State codes that are everyday words: only a comma before them makes them a state. */
export const wordCodes: ReadonlySet<string> = new Set([
  ...[
    'al',
    'as',
    'co',
    'de',
    'hi',
    'id',
    'in',
    'la',
    'ma',
    'me',
    'mi',
    'mo',
    'ms',
    'ne',
    'oh',
    'ok',
    'on',
    'or',
  ],
  ...['pa', 'pe', 'act'],
]);
