title = Frag noch einmal

sample = Versuch „Kühlbox 1,2 A, 100Ah, 3 Tage?“ oder sag „Hilfe“.
i-got = Verstanden habe ich: { $parts }. Was möchtest du wissen: wie lange es hält, was du brauchst oder wie du lädst?
welcome = Gern. Noch etwas zum Strom?
hello = Hallo! Was soll ich ausrechnen?
number-of-what = { $number } wovon: Ampere, Amperestunden, Watt, Volt, Stunden?
no-question = Darin habe ich keine Frage zum Strom gefunden. Was möchtest du wissen?
