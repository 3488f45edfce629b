/**
 * The Americas: states, provinces, countries, parks and towns that campers use.
 * Rows as in australia.ts. Source: from memory of maps, rounded to 0.1°; regions by a point in their middle.
 */
export const americas = `
=US
United States/usa/~the states/america/~the us 39.5 -98.4
Alabama 32.8 -86.8
Alaska 63.5 -151.0
Arizona 34.3 -111.7
Arkansas 34.8 -92.4
California/~cali/socal/norcal 36.8 -119.6
Colorado 39.0 -105.5
Connecticut 41.6 -72.7
Delaware 39.0 -75.5
Florida 28.1 -81.6
~Georgia 32.7 -83.4
Hawaii 20.5 -157.0
Idaho 44.3 -114.6
Illinois 40.0 -89.2
Indiana 39.9 -86.3
Iowa 42.0 -93.5
Kansas 38.5 -98.4
Kentucky 37.5 -85.3
Louisiana 31.0 -92.0
Maine 45.3 -69.2
Maryland 39.0 -76.8
Massachusetts 42.3 -71.8
Michigan 44.3 -85.4
Minnesota 46.3 -94.3
Mississippi 32.7 -89.7
Missouri 38.4 -92.5
Montana 47.0 -109.6
Nebraska 41.5 -99.8
Nevada 39.3 -116.6
New Hampshire 43.7 -71.6
New Jersey 40.2 -74.7
New Mexico 34.4 -106.1
New York/nyc 40.7 -74.0
Upstate New York/adirondacks/the adirondacks 43.9 -74.4
North Carolina 35.6 -79.4
North Dakota 47.4 -100.5
Ohio 40.3 -82.8
Oklahoma 35.6 -97.5
Oregon 43.9 -120.6
Pennsylvania 40.9 -77.8
Rhode Island 41.7 -71.6
South Carolina 33.9 -80.9
South Dakota 44.4 -100.2
Tennessee 35.8 -86.4
Texas 31.5 -99.3
Utah 39.3 -111.7
Vermont 44.1 -72.7
~Virginia 37.5 -78.9
Washington/washington state 47.4 -120.4
Washington DC 38.9 -77.0
West Virginia 38.6 -80.6
Wisconsin 44.6 -89.7
Wyoming 43.0 -107.6
New England 43.8 -71.8
Pacific Northwest/pnw 46.5 -121.5
Midwest/the midwest 41.5 -91.0
the southwest 34.5 -110.0
~The South/deep south 32.8 -87.0
Great Plains 41.0 -100.0
Rockies/the rockies/rocky mountains 40.3 -105.7
Appalachians/appalachia/blue ridge 36.5 -81.5
Smokies/the smokies/great smoky mountains/smoky mountains 35.6 -83.5
Mojave/mojave desert/the mojave 35.2 -115.8
Sonoran Desert 32.6 -112.5
Great Lakes 44.5 -85.0
Outer Banks/obx 35.5 -75.5
Florida Keys/~the keys/key west 24.7 -81.3
Gulf Coast 29.8 -91.0
Cascades/the cascades 47.0 -121.5
the sierras/~sierras/eastern sierra 37.8 -118.9
Black Hills/~badlands 43.9 -103.0
Upper Peninsula 46.4 -87.0
Ozarks/the ozarks 36.5 -92.7
Yellowstone 44.6 -110.5
Grand Teton/tetons/the tetons/jackson hole 43.7 -110.7
Yosemite 37.8 -119.5
Grand Canyon/the grand canyon 36.1 -112.1
~Zion/zion national park 37.3 -113.0
Bryce/bryce canyon 37.6 -112.2
~Arches/moab/canyonlands 38.6 -109.6
Capitol Reef 38.2 -111.2
Death Valley 36.5 -117.0
Joshua Tree 33.9 -116.0
Big Sur 36.2 -121.7
~Sequoia 36.5 -118.6
Redwoods/the redwoods 41.2 -124.0
Glacier national park 48.7 -113.8
Crater Lake 42.9 -122.1
Olympic Peninsula/olympic national park 47.8 -123.6
Mount Rainier 46.9 -121.7
Big Bend 29.3 -103.3
Everglades/the everglades 25.4 -80.9
~Acadia/bar harbor 44.3 -68.3
Shenandoah 38.5 -78.5
White Sands 32.8 -106.2
Monument Valley 37.0 -110.1
Sedona 34.9 -111.8
Quartzsite 33.7 -114.2
Lake Havasu/havasu 34.5 -114.3
Lake Tahoe/tahoe 39.1 -120.0
Baja 28.5 -114.0
Los Angeles 34.1 -118.2
San Diego 32.7 -117.2
San Francisco 37.8 -122.4
Sacramento 38.6 -121.5
Palm Springs 33.8 -116.5
Fresno 36.7 -119.8
Las Vegas/vegas 36.2 -115.1
~Reno 39.5 -119.8
~Phoenix 33.4 -112.1
Tucson 32.2 -110.9
~Flagstaff 35.2 -111.6
Yuma 32.7 -114.6
Albuquerque 35.1 -106.7
Santa Fe 35.7 -105.9
Denver 39.7 -105.0
Colorado Springs 38.8 -104.8
Durango 37.3 -107.9
Salt Lake City/~salt lake 40.8 -111.9
St George UT 37.1 -113.6
Boise 43.6 -116.2
Missoula 46.9 -114.0
Bozeman 45.7 -111.0
~Billings 45.8 -108.5
Seattle 47.6 -122.3
Spokane 47.7 -117.4
Portland 45.5 -122.7
~Bend OR/bend oregon 44.1 -121.3
Eugene OR 44.1 -123.1
Anchorage 61.2 -149.9
Fairbanks 64.8 -147.7
Denali 63.1 -151.0
Juneau 58.3 -134.4
Honolulu/oahu 21.3 -157.9
Maui 20.8 -156.3
~Dallas 32.8 -96.8
Houston 29.8 -95.4
~Austin 30.3 -97.7
San Antonio 29.4 -98.5
El Paso 31.8 -106.5
Amarillo 35.2 -101.8
New Orleans 30.0 -90.1
~Mobile 30.7 -88.0
Memphis 35.1 -90.0
Nashville 36.2 -86.8
Atlanta 33.7 -84.4
Miami 25.8 -80.2
Orlando 28.5 -81.4
Tampa 28.0 -82.5
Jacksonville 30.3 -81.7
~Savannah 32.1 -81.1
Charleston 32.8 -79.9
~Charlotte 35.2 -80.8
Asheville 35.6 -82.6
Raleigh 35.8 -78.6
~Richmond 37.5 -77.4
Philadelphia/philly 40.0 -75.2
Boston 42.4 -71.1
Cape Cod 41.7 -70.3
~Buffalo 42.9 -78.9
Pittsburgh 40.4 -80.0
~Cleveland 41.5 -81.7
~Columbus 40.0 -83.0
Cincinnati 39.1 -84.5
Indianapolis 39.8 -86.2
Detroit 42.3 -83.0
Chicago 41.9 -87.6
Milwaukee 43.0 -87.9
Minneapolis 45.0 -93.3
Duluth 46.8 -92.1
Des Moines 41.6 -93.6
Omaha 41.3 -96.0
Kansas City 39.1 -94.6
St Louis 38.6 -90.2
Oklahoma City 35.5 -97.5
Tulsa 36.2 -96.0
Rapid City 44.1 -103.2
Fargo 46.9 -96.8
Cheyenne 41.1 -104.8
=PR
Puerto Rico 18.2 -66.4
=CA
Canada 52.0 -100.0
British Columbia 51.5 -122.0
Alberta 53.0 -114.0
Saskatchewan 52.0 -106.0
Manitoba 51.0 -98.5
Ontario 46.0 -81.0
Quebec 47.5 -71.5
New Brunswick 46.5 -66.3
Nova Scotia 45.0 -63.2
Prince Edward Island/~pei 46.4 -63.2
Newfoundland 48.8 -56.0
Labrador 53.5 -62.0
Yukon/the yukon 62.5 -135.5
Northwest Territories 62.5 -115.0
Nunavut 65.0 -95.0
Vancouver 49.3 -123.1
Vancouver Island/tofino 49.5 -125.5
Kelowna/okanagan/the okanagan 49.9 -119.5
~Whistler 50.1 -123.0
Banff 51.2 -115.6
Lake Louise 51.4 -116.2
~Jasper 52.9 -118.1
Canadian Rockies 51.5 -116.5
Calgary 51.0 -114.1
Edmonton 53.5 -113.5
~Regina 50.4 -104.6
Saskatoon 52.1 -106.7
Winnipeg 49.9 -97.1
Thunder Bay 48.4 -89.2
Toronto 43.7 -79.4
Ottawa 45.4 -75.7
Montreal 45.5 -73.6
Algonquin/algonquin park 45.6 -78.4
Muskoka 45.0 -79.4
Gaspe/gaspesie 48.8 -65.5
Cape Breton 46.3 -60.7
Halifax 44.6 -63.6
St Johns NL 47.6 -52.7
Whitehorse 60.7 -135.1
Yellowknife 62.5 -114.4
=MX
Mexico 23.5 -102.0
Mexico City 19.4 -99.1
Baja Sur/~cabo/todos santos 24.1 -110.3
Yucatan/cancun/tulum 20.5 -88.0
Oaxaca 17.1 -96.7
Guadalajara 20.7 -103.3
=CU
Cuba 21.8 -79.0
=GT
Guatemala 15.5 -90.3
=BZ
Belize 17.2 -88.7
=HN
Honduras 14.8 -86.8
=SV
El Salvador 13.8 -88.9
=NI
Nicaragua 12.8 -85.2
=CR
Costa Rica 9.9 -84.1
=PA
Panama 8.6 -80.4
=JM
Jamaica 18.1 -77.3
=DO
Dominican Republic 18.9 -70.4
=CO
Colombia 4.6 -74.0
Bogota 4.7 -74.1
=VE
Venezuela 7.5 -66.0
=EC
Ecuador -1.5 -78.5
Quito -0.2 -78.5
Galapagos -0.6 -90.4
=PE
Peru -10.0 -75.5
~Lima -12.0 -77.0
Cusco/cuzco -13.5 -72.0
=BO
Bolivia -17.0 -65.0
Uyuni -20.5 -66.8
=BR
~Brazil/brasil -12.0 -50.0
~Rio/rio de janeiro -22.9 -43.2
Sao Paulo -23.5 -46.6
Brasilia -15.8 -47.9
=PY
Paraguay -23.3 -58.0
=UY
Uruguay -32.8 -56.0
=AR
Argentina -34.5 -64.5
Buenos Aires -34.6 -58.4
Patagonia -46.0 -70.5
Mendoza -32.9 -68.8
Salta -24.8 -65.4
Bariloche -41.1 -71.3
Ushuaia/tierra del fuego -54.8 -68.3
El Calafate/el chalten -50.0 -72.6
=CL
Chile -33.5 -70.8
Santiago/santiago de chile -33.4 -70.7
Atacama/san pedro de atacama -23.0 -68.3
Torres del Paine -51.0 -73.0
Carretera Austral -45.5 -72.3
=FK
Falklands/falkland islands -51.7 -59.0
`;
