/**
 * New Zealand, the Pacific, Britain and Ireland: countries, counties, parks and towns that campers use.
 * Rows as in australia.ts. Source: from memory of maps, rounded to 0.1°; regions by a point in their middle.
 */
export const islands = `
=NZ
New Zealand/nz/aotearoa -41.5 173.0
North Island/the north island -38.5 175.8
South Island/the south island -44.0 170.5
Northland/bay of islands/paihia -35.4 174.0
Cape Reinga -34.4 172.7
Auckland -36.9 174.8
Coromandel/the coromandel -36.8 175.5
Waikato -37.6 175.3
~Hamilton -37.8 175.3
Bay of Plenty -37.8 176.8
Tauranga/mount maunganui -37.7 176.2
Rotorua -38.1 176.2
Taupo -38.7 176.1
Tongariro -39.2 175.6
Gisborne/east cape -38.3 178.0
Napier/hawkes bay/hastings NZ -39.5 176.9
New Plymouth/taranaki -39.1 174.1
Whanganui/wanganui -39.9 175.0
Palmerston North -40.4 175.6
~Wellington -41.3 174.8
Wairarapa -41.0 175.6
~Nelson -41.3 173.3
Marlborough/blenheim/picton -41.5 173.9
Abel Tasman -40.9 173.0
Golden Bay -40.8 172.8
Kaikoura -42.4 173.7
Hanmer/hanmer springs -42.5 172.8
West Coast NZ -42.7 171.0
Westport -41.8 171.6
Greymouth -42.5 171.2
Hokitika -42.7 171.0
Arthurs Pass -42.9 171.6
~Christchurch -43.5 172.6
Akaroa/banks peninsula -43.8 173.0
Canterbury NZ -43.7 171.5
Franz Josef/fox glacier -43.4 170.2
Haast -43.9 169.0
Tekapo/lake tekapo -44.0 170.5
Mount Cook/aoraki/mt cook -43.7 170.1
Twizel/mackenzie country/mackenzie -44.3 170.1
Timaru -44.4 171.3
Oamaru -45.1 171.0
Wanaka -44.7 169.1
Queenstown -45.0 168.7
Otago/central otago -45.2 169.4
~Milford/milford sound/fiordland -44.7 167.9
Te Anau -45.4 167.7
Dunedin -45.9 170.5
Catlins/the catlins -46.5 169.5
Invercargill/~southland -46.4 168.3
Stewart Island/rakiura -46.9 168.1
=FJ
Fiji -17.8 178.0
=NC
New Caledonia -21.3 165.5
=VU
Vanuatu -16.5 168.0
=WS
Samoa -13.8 -172.1
=TO
Tonga -21.2 -175.2
=PG
Papua New Guinea/png -6.5 145.0
=SB
Solomon Islands -9.5 160.0
=PF
Tahiti/french polynesia -17.6 -149.5
=GB
United Kingdom/uk/britain/great britain/the uk 53.0 -1.8
England 52.5 -1.5
Scotland 56.6 -4.3
Wales 52.3 -3.7
Northern Ireland/ulster 54.6 -6.7
London 51.5 -0.1
~Kent 51.2 0.8
~Sussex/east sussex/west sussex 50.9 -0.1
~Surrey 51.2 -0.4
Hampshire 51.1 -1.3
New Forest/the new forest 50.9 -1.6
Isle of Wight 50.7 -1.3
Dorset 50.8 -2.3
~Devon/north devon/south devon 50.7 -3.8
Dartmoor 50.6 -3.9
Exmoor 51.1 -3.6
Cornwall 50.4 -4.8
Isles of Scilly/scilly/scillies 49.9 -6.3
Somerset 51.1 -2.9
Wiltshire 51.3 -1.9
Gloucestershire/cotswolds/the cotswolds 51.8 -2.0
Oxfordshire 51.8 -1.3
Berkshire 51.4 -1.0
Buckinghamshire/~bucks 51.8 -0.8
Hertfordshire/herts 51.8 -0.2
Bedfordshire 52.1 -0.5
Essex 51.8 0.6
Suffolk 52.2 1.0
Norfolk/norfolk broads/~the broads 52.6 1.0
Cambridgeshire 52.3 0.1
East Anglia 52.4 0.9
Lincolnshire 53.1 -0.2
Northamptonshire 52.3 -0.9
Leicestershire 52.7 -1.1
Rutland 52.7 -0.6
Nottinghamshire/notts 53.1 -1.0
Derbyshire 53.1 -1.6
Peak District/the peak district/~the peaks 53.3 -1.8
Staffordshire 52.8 -2.0
Shropshire 52.6 -2.7
Herefordshire 52.1 -2.7
Worcestershire 52.2 -2.2
Warwickshire 52.3 -1.6
West Midlands/the midlands/~midlands 52.5 -1.8
Cheshire 53.2 -2.5
Lancashire/lancs 53.9 -2.6
Merseyside 53.4 -3.0
Yorkshire/the dales/yorkshire dales/north yorkshire/west yorkshire 54.0 -1.6
North York Moors/whitby 54.4 -0.8
Durham 54.7 -1.7
Cumbria 54.6 -2.9
Lake District/the lake district/~the lakes 54.5 -3.1
Northumberland 55.2 -2.0
Tyneside/tyne and wear 55.0 -1.6
Isle of Man 54.2 -4.5
~Jersey 49.2 -2.1
Guernsey 49.5 -2.6
Snowdonia/eryri 53.0 -3.9
Anglesey 53.3 -4.4
Pembrokeshire 51.9 -4.9
Gower/the gower 51.6 -4.1
Brecon Beacons/~the beacons/brecon/bannau brycheiniog 51.9 -3.4
Ceredigion/mid wales 52.3 -4.0
Powys 52.3 -3.4
North Wales 53.1 -3.8
South Wales 51.7 -3.5
Cardiff 51.5 -3.2
Swansea 51.6 -3.9
Edinburgh 55.9 -3.2
Glasgow 55.9 -4.3
Aberdeen 57.1 -2.1
Dundee 56.5 -3.0
Inverness 57.5 -4.2
Highlands/the highlands/scottish highlands 57.3 -4.9
Isle of Skye/skye 57.3 -6.2
Isle of Arran/arran 55.6 -5.2
Cairngorms/the cairngorms/aviemore 57.1 -3.7
Fort William/glencoe/ben nevis 56.8 -5.1
Loch Lomond/trossachs 56.1 -4.6
Loch Ness 57.3 -4.5
Argyll/oban 56.4 -5.5
Isle of Mull/~mull 56.4 -6.0
Outer Hebrides/hebrides/the hebrides/harris and lewis 57.9 -7.0
Orkney/orkneys 59.0 -3.1
Shetland/shetlands 60.4 -1.3
Nc500/north coast 500/~sutherland/caithness 58.3 -4.5
Dumfries/galloway 55.0 -4.0
Scottish Borders 55.6 -2.7
~Fife 56.3 -3.1
Belfast 54.6 -5.9
Antrim/causeway coast 55.1 -6.3
Bristol 51.5 -2.6
~Bath 51.4 -2.4
Exeter 50.7 -3.5
Plymouth 50.4 -4.1
Newquay 50.4 -5.1
Penzance/st ives 50.1 -5.5
Bournemouth 50.7 -1.9
Southampton 50.9 -1.4
Portsmouth 50.8 -1.1
Brighton 50.8 -0.1
Oxford 51.8 -1.3
~Cambridge 52.2 0.1
Norwich 52.6 1.3
~Reading 51.5 -1.0
Birmingham 52.5 -1.9
Coventry 52.4 -1.5
Leicester 52.6 -1.1
Nottingham 53.0 -1.2
~Sheffield 53.4 -1.5
Manchester 53.5 -2.2
Liverpool 53.4 -3.0
Leeds 53.8 -1.5
~York 54.0 -1.1
~Hull 53.7 -0.3
Blackpool 53.8 -3.1
Scarborough 54.3 -0.4
Carlisle 54.9 -2.9
Newcastle upon Tyne 55.0 -1.6
Keswick/windermere/ambleside 54.5 -3.0
=IE
Ireland/eire/republic of ireland 53.2 -7.7
Dublin 53.3 -6.3
~Cork/west cork 51.8 -8.7
~Kerry/ring of kerry/killarney/dingle 52.1 -9.7
the burren/doolin 52.9 -9.1
~Galway 53.3 -9.0
Connemara 53.5 -9.9
~Mayo/achill 53.9 -9.5
Sligo 54.2 -8.5
Donegal 54.9 -8.0
Limerick 52.7 -8.6
Waterford 52.2 -7.4
Wexford 52.4 -6.5
Wicklow 53.0 -6.4
Tipperary 52.6 -7.9
Kilkenny 52.6 -7.3
Wild Atlantic Way 53.5 -9.5
`;
