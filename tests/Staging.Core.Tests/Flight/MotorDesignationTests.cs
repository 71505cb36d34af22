using Staging.Core.Flight;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class MotorDesignationTests
{
    [Theory]
    [InlineData("C6-5", "C", 6, "C6-5")]
    [InlineData(" 1/2A3-2 ", "1/2A", 3, "1/2A3-2")]
    [InlineData("D12-0", "D", 12, "D12-0")]
    [InlineData("1/8A0.05-2", "1/8A", 0.05, "1/8A0.05-2")]
    [InlineData("F25.5-P", "F", 25.5, "F25.5-P")]
    [InlineData("O10000-4.5", "O", 10000, "O10000-4.5")]
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
        Assert.IsType<MotorForwardEnd.BurnsThrough>(MotorDesignation.Parse("C6-0").ForwardEnd);
        Assert.Equal(7, Assert.IsType<MotorForwardEnd.Ejects>(MotorDesignation.Parse("C6-7").ForwardEnd).Delay.Seconds);
        Assert.IsType<MotorForwardEnd.Plugged>(MotorDesignation.Parse("C6-P").ForwardEnd);
    }

    [Theory]
    [InlineData("")]
    [InlineData("6-5")]
    [InlineData("c6-5")]
    [InlineData("1/3A3-2")]
    [InlineData("P6-5")]
    [InlineData("C6")]
    [InlineData("C-5")]
    [InlineData("C6--Infinity")]
    [InlineData("C6-Infinity")]
    [InlineData("C6-NaN")]
    [InlineData("C6--5")]
    [InlineData("C0-5")]
    [InlineData("C6-")]
    [InlineData("C6-five")]
    [InlineData("C+6-5")]
    [InlineData("C6-1000")]
    [InlineData("CC6-5")]
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
        Assert.Equal(["FLT020", "FLT021"], MotorDesignation.Parse("D20-0").Compare(motor).Select(f => f.Code));
    }
}
