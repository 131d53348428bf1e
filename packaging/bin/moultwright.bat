@echo off
rem Starts Moultwright from the folder it stands in. MOULTWRIGHT_JAVA_OPTIONS is passed to Java.
setlocal
set "JAVA=java"
if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" @"%~dp0java.options" %MOULTWRIGHT_JAVA_OPTIONS% -Dmoultwright.home="%~dp0.." -cp "%~dp0..\lib\*" org.moultwright.boot.Launcher %*
exit /b %ERRORLEVEL%
