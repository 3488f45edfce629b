/**
 * Africa and Asia: countries, parks and towns that campers use.
 * Rows as in australia.ts. Source: from memory of maps, rounded to 0.1°; regions by a point in their middle.
 */
export const rest = `
=ZA
South Africa/mzansi -29.0 25.0
Western Cape -33.2 20.5
Eastern Cape -32.0 26.5
Northern Cape -29.5 21.5
Kwazulu Natal/kzn -28.7 30.8
Free State -28.6 26.8
Limpopo -23.8 29.3
Mpumalanga -25.5 30.3
Gauteng -26.1 28.1
Cape Town -33.9 18.4
Johannesburg/joburg/jozi -26.2 28.0
Pretoria -25.7 28.2
Durban -29.9 31.0
Port Elizabeth/gqeberha -33.9 25.6
East London -33.0 27.9
Bloemfontein -29.1 26.2
Upington -28.4 21.3
~Springbok/namaqualand/namaqua -29.7 17.9
Garden Route/knysna/tsitsikamma -34.0 23.2
Karoo/the karoo -32.5 22.5
Cederberg/the cederberg -32.4 19.2
langebaan -33.0 18.0
Drakensberg/~the berg -29.2 29.4
Wild Coast -31.7 29.3
~Addo -33.5 25.8
Kruger/kruger park/the kruger/kruger national park -24.0 31.5
Kgalagadi/kgalagadi transfrontier -25.8 20.4
Augrabies -28.6 20.3
Richtersveld -28.3 17.2
Sodwana/isimangaliso -27.9 32.5
Hermanus/overberg -34.4 19.3
Stellenbosch -33.9 18.9
=NA
Namibia/~nam -22.0 17.0
Windhoek -22.6 17.1
Etosha -18.9 16.3
Sossusvlei/sesriem -24.6 15.5
Swakopmund/~swakop/walvis bay -22.7 14.5
Skeleton Coast -20.0 13.3
Damaraland -20.5 14.4
Kaokoland/kaokoveld/opuwo -18.3 13.3
Caprivi/zambezi region -17.8 24.0
Fish River Canyon/ai-ais -27.7 17.6
Luderitz -26.6 15.2
Namib/namib desert -24.0 15.0
Spitzkoppe/brandberg -21.8 15.2
Keetmanshoop -26.6 18.1
=BW
Botswana/~bots -22.2 24.0
Maun -20.0 23.4
Okavango/okavango delta/~the delta/moremi -19.3 23.0
Chobe/kasane/savuti -18.2 25.0
Kalahari/the kalahari/central kalahari/ckgr -22.0 23.5
Makgadikgadi/nxai pan/kubu island -20.6 25.5
Gaborone/~gabs -24.7 25.9
=ZW
Zimbabwe/~zim -19.0 29.8
Harare -17.8 31.0
Victoria Falls/vic falls -17.9 25.8
Hwange -19.0 26.5
Mana Pools -15.8 29.4
Bulawayo -20.1 28.6
=ZM
Zambia -14.5 28.0
Lusaka -15.4 28.3
~Livingstone -17.8 25.9
South Luangwa -13.1 31.6
=MZ
Mozambique/~moz -18.0 35.0
Maputo -25.9 32.6
Inhambane/~tofo -23.9 35.5
=MW
Malawi/lake malawi -13.3 34.0
=SZ
Eswatini/swaziland -26.5 31.5
=LS
Lesotho -29.5 28.3
=AO
Angola -12.3 17.5
=TZ
Tanzania -6.4 35.0
Serengeti -2.3 34.8
Zanzibar -6.2 39.3
Kilimanjaro -3.1 37.4
Arusha -3.4 36.7
=KE
Kenya 0.2 37.9
Nairobi -1.3 36.8
Masai Mara/maasai mara/the mara -1.5 35.1
Mombasa -4.0 39.7
=UG
Uganda 1.3 32.4
=RW
Rwanda -2.0 29.9
=ET
Ethiopia 9.0 39.5
=SD
Sudan 15.5 30.0
=EG
Egypt 26.8 30.0
Cairo 30.0 31.2
~Sinai 29.0 33.8
=LY
Libya 27.0 17.5
=TN
Tunisia 34.0 9.5
=DZ
Algeria 30.0 3.0
=MA
Morocco/maroc 31.8 -6.5
Marrakech/marrakesh 31.6 -8.0
Agadir 30.4 -9.6
Merzouga/erg chebbi 31.1 -4.0
Atlas Mountains/the atlas/high atlas 31.5 -7.0
Sahara/the sahara 24.0 5.0
=EH
Western Sahara 24.2 -13.5
=MR
Mauritania 20.3 -10.3
=SN
Senegal 14.5 -14.5
=GM
Gambia/the gambia 13.4 -15.5
=ML
~Mali 15.0 -3.0
=GH
Ghana 7.9 -1.0
=CI
Ivory Coast 7.6 -5.6
=NG
Nigeria 9.1 8.0
~Lagos 6.5 3.4
=CM
Cameroon 5.7 12.7
=CD
Congo -3.0 23.5
=MG
Madagascar -19.0 46.7
=MU
Mauritius -20.3 57.6
=RE
Reunion Island -21.1 55.5
=IL
Israel 31.5 34.9
Jerusalem 31.8 35.2
Negev/the negev 30.5 34.9
=PS
Palestine 31.9 35.2
=JO
~Jordan 31.0 36.3
Wadi Rum 29.6 35.4
=LB
Lebanon 33.9 35.9
=SY
Syria 35.0 38.5
=IQ
Iraq 33.0 43.7
=IR
Iran 32.5 54.0
Tehran 35.7 51.4
=SA
Saudi Arabia/saudi 24.0 45.0
Riyadh 24.7 46.7
=AE
United Arab Emirates/uae/emirates 24.0 54.0
Dubai 25.2 55.3
Abu Dhabi 24.5 54.4
=OM
Oman 21.0 57.0
Muscat 23.6 58.4
=QA
Qatar/doha 25.3 51.3
=KW
Kuwait 29.3 47.7
=BH
Bahrain 26.1 50.6
=YE
Yemen 15.6 47.6
=KZ
Kazakhstan 48.0 67.0
=UZ
Uzbekistan 41.5 64.0
=KG
Kyrgyzstan 41.5 74.6
=TJ
Tajikistan/pamir/pamirs/pamir highway 38.5 71.5
=TM
Turkmenistan 39.2 59.2
=AF
Afghanistan 34.0 66.0
=PK
Pakistan 30.0 70.0
Islamabad 33.7 73.1
=IN
India 22.5 79.0
Delhi/new delhi 28.6 77.2
Mumbai/bombay 19.1 72.9
~Goa 15.4 74.0
Kerala 10.4 76.4
Rajasthan 26.6 73.8
Ladakh/~leh 34.2 77.6
Himachal 32.0 77.2
Manali 32.2 77.2
Bangalore/bengaluru 13.0 77.6
Himalayas/the himalayas 29.5 83.0
=NP
Nepal 28.2 84.0
Kathmandu 27.7 85.3
=BT
Bhutan 27.4 90.4
=BD
Bangladesh 23.8 90.3
=LK
Sri Lanka 7.6 80.7
Colombo 6.9 79.9
=MV
Maldives 3.2 73.2
=MM
Myanmar/burma 21.0 96.0
=TH
Thailand 15.0 101.0
Bangkok 13.8 100.5
Chiang Mai 18.8 99.0
Phuket 7.9 98.4
=LA
Laos 18.5 103.5
=KH
Cambodia 12.6 105.0
=VN
Vietnam 16.0 107.5
Hanoi 21.0 105.8
Saigon/ho chi minh city 10.8 106.7
=MY
Malaysia 3.8 102.0
Kuala Lumpur 3.1 101.7
Borneo/sabah/sarawak 3.0 114.0
=SG
Singapore 1.4 103.8
=ID
Indonesia -3.0 114.0
Bali -8.4 115.2
Lombok -8.6 116.3
~Java -7.3 110.0
Jakarta -6.2 106.8
Sumatra -0.5 101.5
=TL
Timor/east timor/timor leste -8.8 125.9
=PH
Philippines/the philippines 13.0 122.0
Manila 14.6 121.0
=CN
~China 35.0 104.0
Beijing 39.9 116.4
Shanghai 31.2 121.5
Tibet/lhasa 29.7 91.1
=HK
Hong Kong 22.3 114.2
=TW
Taiwan 23.7 121.0
=MN
Mongolia 46.9 103.8
Gobi/the gobi/gobi desert 43.0 105.0
Ulaanbaatar 47.9 106.9
=KR
South Korea/korea 36.5 127.8
Seoul 37.6 127.0
=KP
North Korea 40.0 127.0
=JP
Japan/nippon 36.5 138.0
Tokyo 35.7 139.7
Hokkaido 43.1 142.0
Sapporo 43.1 141.4
Kyushu 32.8 131.0
Okinawa 26.5 128.0
Osaka/kyoto 34.8 135.6
=AQ
Antarctica -75.0 0.0
`;
