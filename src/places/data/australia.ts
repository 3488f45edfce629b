/**
 * Australia: towns, parks, regions and nicknames that campers use.
 * A row is `name/other name latitude longitude`; a name after ~ is also an everyday word.
 * Source: from memory of maps, rounded to 0.1°; a region is given by a point in its middle.
 */
export const australia = `
=AU
Australia/aus/~oz/straya -25.3 133.8
New South Wales/nsw -32.5 147.0
Victoria/~vic -37.0 144.3
Queensland/qld -22.5 144.5
South Australia/~sa -31.0 135.5
Western Australia/~wa -26.5 121.5
Northern Territory/~nt/the territory/top end/the top end -14.0 132.5
Tasmania/tassie/tas -42.1 146.6
Australian Capital Territory/~act -35.4 149.0
Sydney -33.9 151.2
Melbourne -37.8 145.0
Brisbane/brissie/brissy/bris vegas -27.5 153.0
Perth -31.9 115.9
Adelaide/radelaide -34.9 138.6
Hobart -42.9 147.3
Darwin -12.4 130.8
Canberra -35.3 149.1
Alice Springs/the alice/~alice -23.7 133.9
Uluru/ayers rock/yulara/~the rock -25.2 131.0
Kata Tjuta/the olgas -25.3 130.7
Kings Canyon/watarrka -24.3 131.5
West MacDonnell Ranges/the macdonnells/west macs -23.7 132.5
East MacDonnell Ranges/east macs -23.5 134.6
Red Centre/the red centre/central australia -24.5 133.0
Simpson Desert/the simpson -25.5 137.0
Great Sandy Desert -20.8 124.0
Great Victoria Desert -28.5 128.5
Gibson Desert -24.5 125.0
Tanami/tanami track/the tanami -20.0 130.5
Plenty Highway -22.9 136.0
Gunbarrel Highway -25.0 126.0
Great Central Road -26.5 126.5
Canning Stock Route/the canning -22.0 125.0
Oodnadatta Track -28.5 136.5
Birdsville Track -27.5 138.8
Strzelecki Track -28.5 140.0
Gibb River Road/the gibb -16.4 126.4
Cape York/~the cape/cape york peninsula -12.5 142.8
~The tip -10.7 142.5
Bamaga/seisia -10.9 142.4
Old Telegraph Track/telegraph track/the ot -11.8 142.5
Nullarbor/the nullarbor/nullarbor plain -31.4 130.0
Kimberley/the kimberley/the kimberleys/kimberleys -16.5 126.0
Pilbara/the pilbara -22.0 119.0
Gascoyne -25.0 115.5
~Goldfields/the goldfields -30.8 121.5
Wheatbelt/the wheatbelt -31.8 117.5
Arnhem Land -12.8 134.5
Gulf Country/~the gulf -17.5 140.5
Gulf of Carpentaria -15.0 140.0
Flinders Ranges/the flinders/flinders -31.6 138.6
Wilpena/wilpena pound -31.5 138.6
Arkaroola -30.3 139.3
Barossa/barossa valley/the barossa -34.5 139.0
Eyre Peninsula/the eyre -33.8 135.8
Yorke Peninsula/yorkes/the yorkes -34.6 137.5
Fleurieu Peninsula/the fleurieu -35.5 138.4
Limestone Coast -37.4 140.4
Riverland/the riverland -34.2 140.6
Coorong/the coorong -36.0 139.5
Kangaroo Island -35.8 137.2
Lake Eyre/kati thanda -28.4 137.3
Innamincka/coongie lakes -27.7 140.7
Blue Mountains/the blue mountains -33.6 150.3
Snowy Mountains/the snowies/the snowy mountains/kosciuszko/snowy mountains -36.2 148.4
High Country/the high country/victorian high country/vic high country/alpine national park -37.0 147.0
Great Ocean Road/the great ocean road -38.7 143.5
Gippsland/the gippsland lakes/gippsland lakes -37.9 147.3
East Gippsland -37.6 148.7
Grampians/the grampians/gariwerd -37.2 142.5
Mallee/the mallee -35.3 142.5
Wimmera/the wimmera -36.5 142.3
Otways/the otways/otway -38.7 143.6
Mornington Peninsula -38.4 145.0
Wilsons Promontory/wilsons prom/the prom -39.0 146.4
Mallacoota/croajingolong -37.6 149.8
Sunshine Coast/the sunshine coast/sunny coast -26.6 153.1
Gold Coast/the gold coast/~goldy -28.0 153.4
Central Coast -33.4 151.3
South Coast/nsw south coast -35.8 150.1
North Coast/nsw north coast/mid north coast -31.0 152.9
Northern Rivers -28.7 153.3
Hunter Valley/~the hunter -32.7 151.2
Riverina/the riverina -34.9 146.3
Southern Highlands -34.5 150.4
New England Tablelands -30.5 151.6
Warrumbungles/the warrumbungles/warrumbungle -31.3 149.0
Mungo/lake mungo/mungo national park -33.7 143.0
Sturt National Park -29.2 141.5
Mutawintji -31.3 142.2
Menindee/kinchega -32.4 142.4
Myall Lakes -32.5 152.3
Barrington Tops/the barrington/barrington -32.0 151.5
Kanangra -34.0 150.1
Turon/turon gates -33.1 149.9
Whitsundays/the whitsundays/airlie beach/airlie -20.3 148.8
Far North Queensland/fnq -16.5 145.3
Channel Country -25.5 141.5
Darling Downs -27.6 151.5
Atherton Tablelands/the tablelands/atherton/the atherton -17.3 145.5
Daintree/the daintree/cape tribulation/cape trib -16.2 145.4
Lawn Hill/boodjamulla/adels grove -18.7 138.5
Carnarvon Gorge/carnarvon national park -25.1 148.2
Fraser Island/fraser/k'gari -25.3 153.1
Rainbow Beach/inskip/inskip point/double island point -25.9 153.1
Teewah/noosa north shore -26.3 153.1
Moreton Island/moreton/mulgumpin -27.2 153.4
Stradbroke Island/north stradbroke/straddie/minjerribah -27.5 153.4
Great Keppel Island -23.2 151.0
Agnes Water/1770/seventeen seventy -24.2 151.9
Kakadu/kakadu national park/jabiru -12.8 132.7
Litchfield/litchfield park/litchfield national park -13.2 130.8
Nitmiluk/katherine gorge -14.3 132.4
Katherine -14.5 132.3
Mataranka -14.9 133.1
Daly Waters -16.3 133.4
Daly River -13.8 130.7
Lorella/lorella springs -15.7 135.6
Borroloola/king ash bay -16.1 136.3
Tennant Creek/tennant -19.6 134.2
Devils Marbles/karlu karlu -20.6 134.3
Barkly/barkly tableland/barkly homestead -19.7 135.8
Nhulunbuy/gove -12.2 136.8
Adelaide River -13.2 131.1
Pine Creek -13.8 131.8
Timber Creek -15.7 130.5
Bungle Bungles/bungle bungle/the bungles/purnululu -17.5 128.4
Kununurra -15.8 128.7
Lake Argyle -16.3 128.7
~Wyndham -15.5 128.1
El Questro -16.0 128.0
Halls Creek -18.2 127.7
Fitzroy Crossing -18.2 125.6
~Derby -17.3 123.6
Broome -17.9 122.2
Cape Leveque/dampier peninsula -16.6 123.0
Eighty Mile Beach/80 mile beach/eighty mile -19.7 121.0
Port Hedland/hedland -20.3 118.6
Karratha -20.7 116.8
~Dampier -20.7 116.7
Karijini/~tom price -22.6 118.3
~Newman -23.4 119.7
Marble Bar -21.2 119.7
~Onslow -21.6 115.1
Exmouth/cape range/north west cape -22.0 114.1
Ningaloo/ningaloo reef/coral bay -23.0 113.8
Carnarvon -24.9 113.7
Quobba/gnaraloo -24.3 113.4
Shark Bay/~denham/monkey mia -25.8 113.6
Steep Point -26.1 113.2
Kalbarri -27.7 114.2
Geraldton/gero -28.8 114.6
Dongara -29.3 114.9
Jurien Bay/jurien -30.3 115.0
Cervantes/the pinnacles -30.5 115.1
Lancelin -31.0 115.3
Wave Rock/hyden -32.4 118.9
Rottnest/rotto/rottnest island -32.0 115.5
Fremantle/freo -32.1 115.7
Mandurah -32.5 115.7
Bunbury -33.3 115.6
Busselton/~busso -33.6 115.3
Dunsborough/yallingup -33.6 115.1
Margaret River/margs -34.0 115.1
~Augusta -34.3 115.2
Pemberton -34.4 116.0
~Denmark WA -35.0 117.4
~Albany -35.0 117.9
Bremer Bay -34.4 119.4
Hopetoun -33.9 120.1
Esperance/lucky bay/cape le grand -33.9 121.9
Cape Arid -34.0 123.2
Norseman -32.2 121.8
Kalgoorlie/~kal -30.7 121.5
Coolgardie -31.0 121.2
Laverton -28.6 122.4
Leonora -28.9 121.3
Meekatharra/meeka -26.6 118.5
Mount Magnet/mt magnet -28.1 117.8
Wiluna -26.6 120.2
Kennedy Range -24.6 115.2
Mount Augustus/mt augustus -24.3 116.8
Balladonia -32.4 123.6
Eucla -31.7 128.9
Cocklebiddy -32.0 126.1
Border Village -31.6 129.0
Ceduna -32.1 133.7
Fowlers Bay -32.0 132.4
Head of Bight -31.5 131.1
Streaky Bay/~streaky -32.8 134.2
Venus Bay -33.2 134.7
Elliston -33.6 134.9
Coffin Bay -34.6 135.5
Port Lincoln/~lincoln -34.7 135.9
Tumby Bay -34.4 136.1
Whyalla -33.0 137.5
Port Augusta -32.5 137.8
Port Pirie -33.2 138.0
Gawler Ranges -32.5 135.4
Quorn -32.3 138.0
~Hawker -31.9 138.4
Leigh Creek/~copley -30.6 138.4
Marree -29.6 138.1
William Creek -28.9 136.3
Oodnadatta -27.5 135.4
Coober Pedy/~coober -29.0 134.8
Woomera -31.2 136.8
Roxby Downs/roxby -30.6 136.9
~Marla -27.3 133.6
Dalhousie/dalhousie springs/mount dare -26.4 135.5
~Clare/clare valley -33.8 138.6
~Burra -33.7 138.9
Renmark -34.2 140.7
Berri -34.3 140.6
Loxton -34.5 140.6
Murray Bridge -35.1 139.3
Mannum -34.9 139.3
Victor Harbor/victor harbour -35.6 138.6
Goolwa -35.5 138.8
~Robe/beachport -37.2 139.8
Mount Gambier/mt gambier/~the mount -37.8 140.8
Naracoorte -37.0 140.7
Bordertown -36.3 140.8
Birdsville -25.9 139.4
Bedourie -24.4 139.5
Boulia -22.9 139.9
Windorah -25.4 142.7
Winton -22.4 143.0
Longreach -23.4 144.2
Barcaldine -23.6 145.3
Blackall -24.4 145.5
Charleville -26.4 146.2
Cunnamulla -28.1 145.7
Quilpie -26.6 144.3
Thargomindah/noccundra -28.0 143.8
~Roma -26.6 148.8
St George -28.0 148.6
Goondiwindi/~gundy -28.5 150.3
~Miles/chinchilla -26.7 150.6
Dalby -27.2 151.3
Toowoomba -27.6 152.0
~Warwick -28.2 152.0
Stanthorpe/girraween -28.7 151.9
Injune -25.8 148.6
~Emerald -23.5 148.2
~Sapphire/rubyvale/the gemfields/gemfields -23.4 147.7
Clermont -22.8 147.6
Charters Towers -20.1 146.3
Hughenden/porcupine gorge -20.8 144.2
Richmond QLD -20.7 143.1
Julia Creek -20.7 141.7
Cloncurry/~the curry -20.7 140.5
Mount Isa/mt isa/the isa -20.7 139.5
Camooweal -19.9 138.1
Burketown -17.7 139.5
Normanton -17.7 141.1
Karumba -17.5 140.8
Undara/georgetown QLD -18.2 144.6
Cobbold Gorge -18.8 143.4
Chillagoe -17.1 144.5
Mareeba -17.0 145.4
Cooktown -15.5 145.3
Lakefield/rinyirru -14.9 144.2
~Laura -15.6 144.4
~Coen -13.9 143.2
Weipa -12.6 141.9
Lockhart River/iron range -12.8 143.3
Port Douglas -16.5 145.5
Cairns -16.9 145.8
Innisfail -17.5 146.0
Mission Beach -17.9 146.1
~Tully -17.9 145.9
~Ingham -18.7 146.2
Townsville -19.3 146.8
Magnetic Island/~maggie -19.1 146.8
~Ayr/home hill -19.6 147.4
~Bowen -20.0 148.2
Proserpine -20.4 148.6
Mackay -21.1 149.2
Eungella -21.1 148.5
~Sarina -21.4 149.2
Rockhampton/~rocky -23.4 150.5
Yeppoon/byfield -23.1 150.7
~Gladstone -23.8 151.3
Biloela -24.4 150.5
Bundaberg/~bundy -24.9 152.3
Hervey Bay -25.3 152.9
~Maryborough -25.5 152.7
Gympie -26.2 152.7
Noosa -26.4 153.1
Maroochydore -26.7 153.1
Caloundra -26.8 153.1
Maleny -26.8 152.9
Kingaroy/bunya mountains/the bunyas -26.7 151.7
Bribie/bribie island -27.0 153.1
~Esk/somerset dam -27.2 152.4
Ipswich QLD -27.6 152.8
Lamington/springbrook -28.2 153.1
Tweed Heads/kingscliff -28.2 153.5
Byron Bay/byron -28.6 153.6
Nimbin -28.6 153.2
Ballina/lennox head -28.9 153.6
Lismore -28.8 153.3
Casino NSW -28.9 153.0
Tenterfield -29.1 152.0
Evans Head -29.1 153.4
Yamba/iluka -29.4 153.4
Grafton -29.7 152.9
Woolgoolga/woopi -30.1 153.2
Coffs Harbour/coffs -30.3 153.1
Bellingen/dorrigo -30.4 152.8
Nambucca Heads/nambucca -30.6 153.0
South West Rocks/~hat head -30.9 153.0
Kempsey/crescent head -31.1 152.8
Port Macquarie/port mac -31.4 152.9
~Taree -31.9 152.5
Forster/tuncurry -32.2 152.5
Seal Rocks/~treachery -32.4 152.5
Port Stephens/nelson bay -32.7 152.1
Newcastle NSW/~newy -32.9 151.8
~Newcastle -32.9 151.8
Cessnock -32.8 151.4
Maitland -32.7 151.6
~Singleton -32.6 151.2
Muswellbrook -32.3 150.9
~Scone -32.1 150.9
Tamworth -31.1 150.9
Armidale -30.5 151.7
Glen Innes -29.7 151.7
Inverell/copeton -29.8 151.1
Moree -29.5 149.8
Narrabri/mount kaputar/kaputar -30.3 149.8
Gunnedah -31.0 150.3
Coonabarabran/coona -31.3 149.3
Lightning Ridge/~the ridge -29.4 148.0
Walgett -30.0 148.1
Brewarrina -30.0 146.9
~Bourke -30.1 145.9
Cobar -31.5 145.8
Wilcannia -31.6 143.4
White Cliffs -30.8 143.1
Tibooburra/cameron corner -29.4 142.0
Broken Hill/silverton -32.0 141.5
Nyngan -31.6 147.2
Dubbo -32.2 148.6
~Wellington NSW -32.6 148.9
Mudgee -32.6 149.6
Gulgong -32.4 149.5
~Parkes -33.1 148.2
~Forbes -33.4 148.0
~Orange -33.3 149.1
Bathurst/sofala -33.4 149.6
Lithgow/newnes -33.5 150.2
Katoomba -33.7 150.3
Oberon -33.7 149.9
Cowra -33.8 148.7
~Young -34.3 148.3
West Wyalong -33.9 147.2
~Griffith -34.3 146.0
~Hay -34.5 144.8
Hillston -33.5 145.5
~Ivanhoe -32.9 144.3
Balranald -34.6 143.6
Wentworth -34.1 141.9
Deniliquin/deni -35.5 145.0
Wagga Wagga/wagga -35.1 147.4
Gundagai -35.1 148.1
Tumut/blowering -35.3 148.2
Yass -34.8 148.9
Goulburn -34.8 149.7
Albury -36.1 146.9
Corryong/khancoban -36.2 147.9
Jindabyne/jindy -36.4 148.6
Thredbo/perisher -36.5 148.3
Cooma -36.2 149.1
Wollongong/the gong -34.4 150.9
Kiama -34.7 150.9
Nowra/jervis bay/booderee -35.0 150.6
Ulladulla/pretty beach -35.4 150.5
Batemans Bay/batemans -35.7 150.2
Moruya -35.9 150.1
Narooma -36.2 150.1
Bermagui -36.4 150.1
Tathra/mimosa rocks -36.7 150.0
Merimbula -36.9 149.9
~Eden/ben boyd/green cape -37.1 149.9
Lord Howe Island -31.5 159.1
Norfolk Island -29.0 167.9
Wodonga -36.1 146.9
~Bright/mount buffalo -36.7 147.0
Falls Creek/mount beauty -36.9 147.3
Mount Hotham/hotham/dinner plain -37.0 147.1
Omeo -37.1 147.6
Dargo -37.5 147.3
Licola/wonnangatta -37.3 146.8
Mansfield/jamieson -37.1 146.1
Lake Eildon/eildon -37.2 145.9
Marysville -37.5 145.8
Healesville/yarra valley -37.6 145.5
Walhalla -37.9 146.4
~Sale/seaspray -38.1 147.1
Bairnsdale -37.8 147.6
Lakes Entrance -37.9 148.0
Orbost/marlo/cape conran -37.7 148.5
Snowy River -37.3 148.3
Buchan -37.5 148.2
Cann River/point hicks -37.6 149.2
Traralgon -38.2 146.5
Phillip Island/cowes -38.5 145.2
Inverloch -38.6 145.7
Geelong -38.1 144.4
Torquay VIC/bells beach -38.3 144.3
~Torquay -38.3 144.3
~Lorne -38.5 144.0
Apollo Bay/johanna/cape otway -38.8 143.6
Port Campbell/twelve apostles -38.6 143.0
Warrnambool -38.4 142.5
Port Fairy -38.4 142.2
Portland VIC -38.3 141.6
Nelson VIC/glenelg river -38.0 141.0
Hamilton VIC -37.7 142.0
Halls Gap -37.1 142.5
Horsham -36.7 142.2
Mount Arapiles/natimuk -36.8 141.8
Little Desert -36.6 141.5
Big Desert/wyperfeld -35.6 142.0
Ararat -37.3 142.9
Ballarat -37.6 143.9
Bendigo -36.8 144.3
Castlemaine -37.1 144.2
Daylesford -37.3 144.1
Echuca/moama -36.1 144.8
Barmah -36.0 145.0
Cobram -35.9 145.6
Yarrawonga/mulwala -36.0 146.0
Shepparton/shep -36.4 145.4
Wangaratta/~wang -36.4 146.3
Beechworth -36.4 146.7
Swan Hill -35.3 143.6
Mildura -34.2 142.1
Ouyen -35.1 142.3
Hattah -34.8 142.3
Kerang -35.7 143.9
Launceston/launnie/lonnie -41.4 147.1
Devonport -41.2 146.4
Burnie -41.1 145.9
~Stanley/~smithton -40.8 145.3
Arthur River/tarkine/the tarkine -41.1 144.7
Strahan -42.2 145.3
Queenstown TAS -42.1 145.6
Zeehan/corinna -41.9 145.3
Cradle Mountain/~cradle -41.7 145.9
Lake St Clair -42.1 146.2
Great Lake/miena/central highlands -41.9 146.7
St Helens TAS/bay of fires/binalong bay -41.3 148.3
Bicheno -41.9 148.3
Freycinet/coles bay/wineglass bay -42.1 148.3
Maria Island -42.7 148.1
Port Arthur -43.1 147.9
Bruny Island/bruny -43.3 147.3
Cockle Creek -43.6 146.9
Mount Field -42.7 146.7
Flinders Island -40.0 148.1
King Island -39.9 143.9
`;
