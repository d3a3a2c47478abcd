#!/usr/bin/perl
# Reads the test vectors with nothing but the language itself and checks what can be checked without equations of state:
# shapes, gauge against absolute pressures, glides, order of densities and enthalpies, margins of the verdicts, fill limits.
# Usage: perl read-vectors.pl FOLDER; ends with 0 where everything fits, 1 where something does not.
use strict;
use warnings;

my $folder = shift // '.';
my @faults;

sub rows {
    my ($file) = @_;
    open(my $in, '<', "$folder/$file.csv") or do { push @faults, "$file.csv cannot be read"; return; };
    my @header = cells(scalar <$in>);
    my (@rows, %seen);
    while (my $line = <$in>) {
        my @cells = cells($line);
        push @faults, "$file.csv line $.: " . @cells . " cells, not " . @header if @cells != @header;
        my %row;
        @row{@header} = @cells;
        push @faults, "$file.csv: id $row{id} stands there twice" if defined $row{id} && $seen{$row{id}}++;
        push @rows, \%row;
    }
    return @rows;
}

sub cells {
    my ($line) = @_;
    $line =~ s/\r?\n\z//;
    my @cells;
    while ($line =~ /\G(?:"((?:[^"]|"")*)"|([^,]*))(,|\z)/g) {
        my ($quoted, $plain, $end) = ($1, $2, $3);
        if (defined $quoted) { $quoted =~ s/""/"/g; }
        push @cells, defined $quoted ? $quoted : $plain;
        last if $end eq '';
    }
    return @cells;
}

sub near {
    my ($what, $one, $other, $width) = @_;
    push @faults, "$what: $one against $other" if !(abs($one - $other) <= $width);
}

# ISO 2533:1975, pressure of the standard atmosphere below 11 km
sub atmosphere { return 101325 * (1 - 0.0065 * $_[0] / 288.15) ** 5.255876; }

my (%kilopascals, %celsius, %properties);
my @properties = rows('properties');
for my $row (@properties) {
    my ($name, $q, $t, $p, $u) = @$row{qw(refrigerant quantity temperature_K pressure_Pa unit)};
    push @faults, "$row->{id}: answer $row->{answer} is no number" if $row->{answer} !~ /\A-?\d+(?:\.\d+)?\z/;
    push @faults, "$row->{id}: tolerance is not above 0" if !($row->{tolerance} > 0);
    $kilopascals{"$name $q $t"} = $row->{answer} if $u eq 'kPa';
    $celsius{"$name $q $p"} = $row->{answer} if $u eq 'degC';
    $properties{"$name $q $t $p"} = $row->{answer} if $row->{altitude_m} eq '';
}
my $pairs = 0;
for my $row (@properties) {
    my ($name, $q, $t, $p, $u) = @$row{qw(refrigerant quantity temperature_K pressure_Pa unit)};
    if ($u eq 'psig' && defined $kilopascals{"$name $q $t"}) {
        # one pound on a square inch is 6894.757293168 Pa; ten digits and a standard atmosphere by two ways of rounding its constants
        my $psig = (1000 * $kilopascals{"$name $q $t"} - atmosphere($row->{altitude_m})) / 6894.757293168;
        near("$row->{id}: gauge pressure", $row->{answer}, $psig, 2e-3);
        $pairs++;
    }
    if ($q eq 'glide') {
        my ($bubble, $dew) = map { $celsius{"$name $_ $p"} } qw(bubble_temperature dew_temperature);
        next if !defined $bubble || !defined $dew;
        near("$row->{id}: glide", $row->{answer}, $dew - $bubble, 1e-6);
        $pairs++;
    }
    for my $what (qw(density enthalpy)) {
        next if $q ne "dew_vapour_$what";
        my $liquid = $properties{"$name bubble_liquid_$what $t $p"};
        push @faults, "$row->{id}: $what of vapour and liquid are the wrong way round"
            if defined $liquid && ($what eq 'density' ? $row->{answer} >= $liquid : $row->{answer} <= $liquid);
    }
}
push @faults, "only $pairs pairs of rows could be held against each other" if $pairs < 100;

for my $row (rows('fills')) {
    my $mass = $row->{maximum_contents_kg};
    push @faults, "$row->{id}: $mass kg is more than the water or nothing"
        if !($mass > 0 && $mass <= 2 * $row->{water_capacity_kg});
}
my %wet;
for my $row (rows('verdicts')) {
    my $sum = 0;
    my $known = 0;
    for my $level (qw(low on_target high)) {
        next if $row->{"probability_$level"} eq '';
        $known++;
        $sum += $row->{"probability_$level"};
    }
    near("$row->{id}: sum of the probabilities", $sum, 1, 3e-6) if $known == 3;
    my ($level, $valve, $target) = ($row->{level}, $row->{metering} eq 'expansion-valve', $row->{judged_against_K});
    push @faults, "$row->{id}: level $level" if $level !~ /\A(?:low|on-target|high|undecided|not-charge)\z/;
    push @faults, "$row->{id}: a fault belongs to not-charge" if ($level eq 'not-charge') != ($row->{fault} ne '');
    near("$row->{id}: target", $target, $row->{$valve ? 'target_subcooling_K' : 'target_superheat_K'}, 1e-6)
        if $row->{return_wet_bulb_K} eq '';
    # short of charge shows as much superheat behind an orifice and as little subcooling before a valve
    my $short = $valve ? $target - $row->{subcooling_K} : $row->{superheat_K} - $target;
    push @faults, "$row->{id}: $level against the reading" if $level eq 'low' && $short <= 0 || $level eq 'high' && $short >= 0;
    $wet{"$row->{return_wet_bulb_K} $row->{condenser_air_K}"} = $target if $row->{return_wet_bulb_K} ne '';
}
# moister return air asks for more superheat, warmer outdoor air for less
for my $one (keys %wet) {
    for my $other (keys %wet) {
        my ($wet, $dry, $moister, $warmer) = (split(' ', $one), split(' ', $other));
        push @faults, "targets at $one and $other are the wrong way round"
            if $moister > $wet && $warmer == $dry && $wet{$other} <= $wet{$one}
            || $warmer > $dry && $moister == $wet && $wet{$other} >= $wet{$one};
    }
}
push @faults, 'fewer than four targets from the air' if keys %wet < 4;
for my $file (qw(refusals refused-fills refused-verdicts)) {
    for my $row (rows($file)) {
        push @faults, "$row->{id}: no error named" if $row->{error} eq '';
    }
}
my @version = rows('version');
push @faults, 'the version of the data is missing' if @version != 1 || $version[0]{data} eq '';

print STDERR "$_\n" for @faults[0 .. ($#faults > 9 ? 9 : $#faults)];
exit(@faults ? 1 : 0);
