using Staging.Core.Flight;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class MotorDesignationTests
{
    [Theory]
    [InlineData("C7-4", "C", 7, "C7-4")]
    [InlineData(" 1/2A7-3 ", "1/2A", 7, "1/2A7-3")]
    [InlineData("D19-0", "D", 19, "D19-0")]
    [InlineData("1/8A0.05-2", "1/8A", 0.05, "1/8A0.05-2")]
    [InlineData("F97.5-P", "F", 97.5, "F97.5-P")]
    [InlineData("O9100-4.5", "O", 9100, "O9100-4.5")]
    public void A_code_is_read_and_written_again(string text, string letter, double thrust, string again)
    {
        MotorDesignation read = MotorDesignation.Parse(text);
        Assert.Equal(letter, read.ImpulseClass);
        Assert.Equal(thrust, read.AverageThrust.Newtons);
        Assert.Equal(again, read.ToString());
    }

    [Fact]
    public void Zero_burns_through_a_number_ejects_and_P_is_plugged()
    {
        Assert.IsType<MotorForwardEnd.BurnsThrough>(MotorDesignation.Parse("C7-0").ForwardEnd);
        Assert.Equal(6, Assert.IsType<MotorForwardEnd.Ejects>(MotorDesignation.Parse("C7-6").ForwardEnd).Delay.Seconds);
        Assert.IsType<MotorForwardEnd.Plugged>(MotorDesignation.Parse("C7-P").ForwardEnd);
    }

    [Theory]
    [InlineData("")]
    [InlineData("7-4")]
    [InlineData("c7-4")]
    [InlineData("1/3A7-3")]
    [InlineData("P7-4")]
    [InlineData("C7")]
    [InlineData("C-4")]
    [InlineData("C7--Infinity")]
    [InlineData("C7-Infinity")]
    [InlineData("C7-NaN")]
    [InlineData("C7--4")]
    [InlineData("C0-4")]
    [InlineData("C7-")]
    [InlineData("C7-four")]
    [InlineData("C+7-4")]
    [InlineData("C7-1000")]
    [InlineData("CC7-4")]
    public void What_is_no_code_is_refused(string text)
    {
        Assert.False(MotorDesignation.TryParse(text, out _));
        Assert.Throws<FormatException>(() => MotorDesignation.Parse(text));
    }

    [Theory]
    [InlineData(0.3, "1/8A")]
    [InlineData(2.5, "A")]
    [InlineData(2.50001, "B")]
    [InlineData(8.5, "C")]
    [InlineData(10.2, "D")]
    [InlineData(40960, "O")]
    public void The_upper_end_belongs_to_the_class(double impulse, string name) =>
        Assert.Equal(name, MotorDesignation.ClassOf(Impulse.FromNewtonSeconds(impulse)));

    [Fact]
    public void An_impulse_beyond_the_table_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MotorDesignation.ClassOf(Impulse.FromNewtonSeconds(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MotorDesignation.ClassOf(Impulse.FromNewtonSeconds(41_000)));
    }

    [Fact]
    public void A_motor_that_disagrees_with_its_code_is_found()
    {
        Motor motor = Motor(new MotorForwardEnd.BurnsThrough());
        Assert.Empty(MotorDesignation.Parse("C9-0").Compare(motor));
        Assert.Equal(["FLT020", "FLT021"], MotorDesignation.Parse("D23-0").Compare(motor).Select(f => f.Code));
        Assert.Equal(["FLT022"], MotorDesignation.Parse("C9-4").Compare(motor).Select(f => f.Code));
        Assert.Empty(MotorDesignation.Parse("C9-4").Compare(Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) })));
        Assert.Equal(["FLT022"], MotorDesignation.Parse("C9-6").Compare(Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) })).Select(f => f.Code));
    }

    [Theory]
    [InlineData("invented motor")]
    [InlineData("invented C9-0")]
    [InlineData("C9-4 of ours", "FLT022 Stages[0].Motor.ForwardEnd: The motor burns through; by the code C9-4 it ejects after 4 s.")]
    [InlineData("D23-P", "FLT020 Stages[0].Motor.Thrust", "FLT021 Stages[0].Motor.Thrust", "FLT022 Stages[0].Motor.ForwardEnd")]
    public void A_motor_is_held_to_the_code_in_its_name(string name, params string[] says)
    {
        Stage booster = Booster();
        FlightPlan plan = Plan(booster with { Motor = booster.Motor with { Name = name } });
        string[] found = [.. plan.Check().Where(f => f.Code is "FLT020" or "FLT021" or "FLT022").Select(f => f.ToString())];
        Assert.Equal(says, found, (part, whole) => whole.StartsWith(part, StringComparison.Ordinal));
    }
}
