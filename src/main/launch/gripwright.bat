@echo off
rem Starts Gripwright from this folder; needs Java 17 or later, from JAVA_HOME or the path.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
where "%java%" >nul 2>nul
if errorlevel 1 if not exist "%java%" (
  echo Gripwright needs Java 17 or later: install a JDK or JRE and set JAVA_HOME, or put java on the path. 1>&2
  exit /b 1
)
"%java%" --module-path "%here%lib\javafx" --add-modules javafx.controls,javafx.swing -cp "%here%lib\*" gripwright.app.Gripwright %*
exit /b %errorlevel%
